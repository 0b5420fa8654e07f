package io.github.readfall.base.geom;

import java.util.List;

/** Finds the bounds of an outline: at the ends of its steps, and where a curve turns back. */
final class Extremes {

  private Extremes() {}

  static Box of(List<Path.Step> steps) {
    double[] x = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
    double[] y = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
    XY pen = new XY(0, 0);
    for (Path.Step step : steps) {
      if (step instanceof Path.Curve curve) {
        include(pen.x(), curve.control1().x(), curve.control2().x(), curve.to().x(), x);
        include(pen.y(), curve.control1().y(), curve.control2().y(), curve.to().y(), y);
        pen = curve.to();
      } else if (!(step instanceof Path.Close)) {
        pen = step instanceof Path.Line line ? line.to() : ((Path.Move) step).to();
        include(pen.x(), x);
        include(pen.y(), y);
      }
    }
    return x[0] > x[1] ? new Box(0, 0, 0, 0) : Box.ofEdges(x[0], y[0], x[1], y[1]);
  }

  private static void include(double value, double[] range) {
    range[0] = Math.min(range[0], value);
    range[1] = Math.max(range[1], value);
  }

  /** One coordinate of a cubic Bézier curve: its end, and where its derivative is 0. */
  private static void include(double p0, double p1, double p2, double p3, double[] range) {
    include(p3, range);
    if (Math.min(p1, p2) >= range[0] && Math.max(p1, p2) <= range[1]) {
      return; // the curve is between its points
    }
    double a = p3 - 3 * p2 + 3 * p1 - p0;
    double b = 2 * (p2 - 2 * p1 + p0);
    double c = p1 - p0;
    double square = b * b - 4 * a * c;
    if (square >= 0) {
      double q = -(b + Math.copySign(Math.sqrt(square), b)) / 2; // never subtracts two near values
      includeAt(q / a, p0, p1, p2, p3, range);
      includeAt(c / q, p0, p1, p2, p3, range);
    }
  }

  private static void includeAt(
      double t, double p0, double p1, double p2, double p3, double[] range) {
    if (t > 0 && t < 1) {
      double u = 1 - t;
      include(u * u * u * p0 + 3 * u * u * t * p1 + 3 * u * t * t * p2 + t * t * t * p3, range);
    }
  }
}
