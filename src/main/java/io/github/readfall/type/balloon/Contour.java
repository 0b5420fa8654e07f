package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import java.util.ArrayList;
import java.util.List;

/**
 * Draws an outline round its inner area. Everything is centred on the origin, and nothing is drawn
 * inside the inner area, so the text keeps its margin from what is seen.
 */
interface Contour {

  /**
   * Draws the outline.
   *
   * @param halfWidthPx of the inner area
   * @param halfHeightPx of the inner area
   */
  Path around(double halfWidthPx, double halfHeightPx, OutlineStyle style);

  /** The greatest distance of the outline from the inner area, in capitals. */
  double reachCapitals();

  /** The whole number nearest a count. */
  static int count(double count, int least) {
    return Math.max(least, (int) Math.round(count));
  }

  /** Control points this far along the tangent make a quarter of a circle, to 0.03 %. */
  double QUARTER = 0.5522847498;

  /** The inner area itself. */
  record Plain(double radiusMargins) implements Contour {

    @Override
    public Path around(double a, double b, OutlineStyle style) {
      double r = Math.min(radiusMargins * style.marginPx(), Math.min(a, b));
      return r == 0 ? square(a, b) : corners(a, b, r, r);
    }

    private static Path square(double a, double b) {
      return Path.polygon(List.of(new XY(-a, -b), new XY(a, -b), new XY(a, b), new XY(-a, b)));
    }

    @Override
    public double reachCapitals() {
      return 0;
    }
  }

  /** A superellipse. */
  record Round() implements Contour {

    @Override
    public Path around(double a, double b, OutlineStyle style) {
      return new Superellipse(a, b, style.squareness()).path();
    }

    @Override
    public double reachCapitals() {
      return 0;
    }
  }

  /** A box with elliptic corners. */
  private static Path corners(double a, double b, double rx, double ry) {
    List<Path.Step> steps = new ArrayList<>();
    XY pen = new XY(a, b - ry);
    steps.add(new Path.Move(pen));
    double[][] signs = {{1, 1}, {-1, 1}, {-1, -1}, {1, -1}};
    for (int i = 0; i < signs.length; i++) {
      double sx = signs[i][0];
      double sy = signs[i][1];
      XY side = new XY(sx * a, sy * (b - ry));
      XY flat = new XY(sx * (a - rx), sy * b);
      XY sideControl = side.plus(0, sy * ry * QUARTER);
      XY flatControl = flat.plus(sx * rx * QUARTER, 0);
      boolean sideFirst = i % 2 == 0;
      XY from = sideFirst ? side : flat;
      if (pen.distanceTo(from) > 0) {
        steps.add(new Path.Line(from));
      }
      pen = sideFirst ? flat : side;
      steps.add(
          sideFirst
              ? new Path.Curve(sideControl, flatControl, flat)
              : new Path.Curve(flatControl, sideControl, side));
    }
    steps.add(new Path.Close());
    return new Path(steps);
  }
}
