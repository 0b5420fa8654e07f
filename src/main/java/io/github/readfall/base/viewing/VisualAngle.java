package io.github.readfall.base.viewing;

/**
 * The visual angle of an object, whatever its size and distance.
 *
 * <p>Formula: {@code 2 atan(h / 2d)}. Worked example: 1 mm seen from 200 mm is 17.19 minutes of
 * arc, the 1/200 rule of the FAA's human-factors training.
 *
 * @param arcmin minutes of arc; positive
 */
public record VisualAngle(double arcmin) {

  private static final double ARCMIN_PER_DEGREE = 60;

  /** The angle of a height seen from a distance, both in millimetres. */
  public static VisualAngle of(double heightMm, double distanceMm) {
    double radians = 2 * StrictMath.atan(heightMm / (2 * distanceMm));
    return new VisualAngle(StrictMath.toDegrees(radians) * ARCMIN_PER_DEGREE);
  }

  /** The height that fills this angle at a distance, both in millimetres. */
  public double heightMm(double distanceMm) {
    return 2 * distanceMm * StrictMath.tan(StrictMath.toRadians(arcmin / ARCMIN_PER_DEGREE) / 2);
  }
}
