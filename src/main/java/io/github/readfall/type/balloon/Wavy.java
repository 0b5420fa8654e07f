package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Path;

/** A wave that never comes inside the ellipse. Proportions are house defaults, no source. */
record Wavy() implements Contour {

  private static final double WAVE_MARGINS = 4.4;
  private static final double HIGH_MARGINS = 0.6;
  private static final int LEAST = 8;
  private static final int POINTS_PER_WAVE = 8;
  private static final double CLEAR_PX = 0.5; // what a curve through points may cut

  @Override
  public Path around(double a, double b, double unitPx) {
    EllipsePoints waves = EllipsePoints.spaced(a, b, WAVE_MARGINS * unitPx, LEAST);
    double half = HIGH_MARGINS * unitPx / 2;
    return waves.offset(
        waves.feet() * POINTS_PER_WAVE,
        way -> CLEAR_PX + half * (1 + StrictMath.cos(2 * Math.PI * way * waves.feet())));
  }

  @Override
  public double reachMargins() {
    return HIGH_MARGINS + 0.1;
  }
}
