package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Evenly spaced feet on an ellipse, for outlines that touch it there and bulge out between.
 *
 * @param a half the width
 * @param b half the height
 * @param feet how many
 */
record EllipsePoints(double a, double b, int feet) {

  private static final int SAMPLES = 180;

  /**
   * As many points as are about this far apart.
   *
   * @param least number of them
   */
  static EllipsePoints spaced(double a, double b, double apartPx, int least) {
    double h = (a - b) * (a - b) / ((a + b) * (a + b));
    double around = Math.PI * (a + b) * (1 + 3 * h / (10 + Math.sqrt(4 - 3 * h))); // Ramanujan
    int feet = Math.max(least, (int) Math.round(around / apartPx));
    return new EllipsePoints(a, b, feet + feet % 2); // even, so that both ends are alike
  }

  /** The angles of the feet, evenly spaced along the curve, a gap's middle at the right. */
  List<Double> angles() {
    return angles(0.5);
  }

  /** The angles of the feet, the first so many gaps from the right end. */
  private List<Double> angles(double start) {
    double[] way = new double[SAMPLES + 1];
    for (int i = 1; i <= SAMPLES; i++) {
      way[i] = way[i - 1] + at(angle(i)).distanceTo(at(angle(i - 1)));
    }
    List<Double> angles = new ArrayList<>();
    int sample = 0;
    for (int foot = 0; foot < feet; foot++) {
      double target = way[SAMPLES] * (foot + start) / feet;
      while (way[sample + 1] < target) {
        sample++;
      }
      double share = (target - way[sample]) / (way[sample + 1] - way[sample]);
      angles.add(angle(sample) + share * (angle(1) - angle(0)));
    }
    return angles;
  }

  private static double angle(int sample) {
    return 2 * Math.PI * sample / SAMPLES;
  }

  /** The angle half way from one to the next, going round. */
  double between(double from, double to) {
    return (from + to + (to < from ? 2 * Math.PI : 0)) / 2;
  }

  XY at(double angle) {
    return new XY(a * StrictMath.cos(angle), b * StrictMath.sin(angle));
  }

  /** Returns true if a point is inside. */
  boolean holds(XY point) {
    double x = point.x() / a;
    double y = point.y() / b;
    return x * x + y * y < 1;
  }

  /** A point off the curve, outwards. */
  XY outside(double angle, double byPx) {
    double nx = b * StrictMath.cos(angle);
    double ny = a * StrictMath.sin(angle);
    double length = Math.sqrt(nx * nx + ny * ny);
    return at(angle).plus(nx / length * byPx, ny / length * byPx);
  }

  /** A point along the tangent, onwards for a positive way. */
  XY along(double angle, double byPx) {
    double tx = -a * StrictMath.sin(angle);
    double ty = b * StrictMath.cos(angle);
    double length = Math.sqrt(tx * tx + ty * ty);
    return at(angle).plus(tx / length * byPx, ty / length * byPx);
  }

  /** A smooth curve at a varying distance outside. */
  Path offset(int points, DoubleUnaryOperator distancePx) {
    List<XY> through = new ArrayList<>();
    for (double angle : new EllipsePoints(a, b, points).angles(0)) {
      through.add(outside(angle, distancePx.applyAsDouble((double) through.size() / points)));
    }
    return smooth(through);
  }

  /** A closed Catmull-Rom curve through points. */
  private static Path smooth(List<XY> through) {
    int n = through.size();
    List<Path.Step> steps = new ArrayList<>();
    steps.add(new Path.Move(through.get(0)));
    for (int i = 0; i < n; i++) {
      XY before = through.get((i + n - 1) % n);
      XY from = through.get(i);
      XY to = through.get((i + 1) % n);
      XY after = through.get((i + 2) % n);
      steps.add(
          new Path.Curve(
              from.plus((to.x() - before.x()) / 6, (to.y() - before.y()) / 6),
              to.plus((from.x() - after.x()) / 6, (from.y() - after.y()) / 6),
              to));
    }
    steps.add(new Path.Close());
    return new Path(steps);
  }
}
