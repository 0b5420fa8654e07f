package io.github.readfall.base.viewing;

/**
 * A phone in a reader's hand. A strip fills its width, so the narrowest phone shows it smallest.
 *
 * @param name shown to people, e.g. in a finding
 * @param widthDp width of the screen in density-independent pixels; positive
 * @param heightDp height of the screen in density-independent pixels; positive
 * @param distanceMm from eye to screen, in millimetres; positive
 */
public record Phone(String name, double widthDp, double heightDp, double distanceMm) {

  /**
   * One density-independent pixel: 1/160 inch, nominal. A real screen differs by some per cent
   * (Android developer documentation, "Support different pixel densities").
   */
  public static final double DP_MM = 25.4 / 160;

  /**
   * The phone a series is judged on unless it names others: 360 dp is the narrowest common width,
   * 362 mm the mean distance at which people read their own messages (Bababekova et al. 2011,
   * Optometry and Vision Science 88(7)).
   */
  public static final Phone SMALL = new Phone("small", 360, 640, 362);

  public Phone {
    if (!(widthDp > 0) || !(heightDp > 0) || !(distanceMm > 0)) {
      throw new IllegalArgumentException(
          "not a phone: " + widthDp + " x " + heightDp + " dp at " + distanceMm + " mm");
    }
  }

  /** A length on the strip as this phone shows it, in dp. */
  public double dp(double lengthPx, double stripWidthPx) {
    return lengthPx * widthDp / stripWidthPx;
  }

  /** The visual angle of a length on the strip on this phone. */
  public VisualAngle angleOf(double lengthPx, double stripWidthPx) {
    return VisualAngle.of(dp(lengthPx, stripWidthPx) * DP_MM, distanceMm);
  }

  /** The length on the strip that looks this large on this phone, in strip pixels. */
  public double lengthPx(VisualAngle angle, double stripWidthPx) {
    return angle.heightMm(distanceMm) / DP_MM * stripWidthPx / widthDp;
  }
}
