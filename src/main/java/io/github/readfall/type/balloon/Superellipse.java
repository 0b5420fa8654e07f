package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import java.util.ArrayList;
import java.util.List;

/**
 * The curve {@code |x/a|^n + |y/b|^n = 1} round the origin. An angle is that of the ray that meets
 * the curve when it is drawn out to be as wide as high.
 *
 * @param a half the width
 * @param b half the height
 * @param exponent n; 2 for an ellipse, {@value #MOST_EXPONENT} at most
 */
record Superellipse(double a, double b, double exponent) {

  /** Above, eight curves no longer follow it to a thousandth. */
  static final double MOST_EXPONENT = 6;

  private static final int ROUNDS = 6;
  private static final int SAMPLES = 7;
  private static final double DAMPING = 1e-4; // two unknowns do nearly the same for an ellipse
  private static final double EIGHTH = Math.PI / 4;

  /** The curve from the right end to the corner half way up, if half of it is 1. */
  private record Reaches(double exponent, XY corner, double first, double second) {}

  private static final Reaches USUAL = reaches(OutlineStyle.SQUARENESS);

  Superellipse {
    if (!(exponent >= 2 && exponent <= MOST_EXPONENT)) {
      throw new IllegalArgumentException("exponent " + exponent);
    }
  }

  /** The point at an angle. */
  XY at(double angle) {
    XY unit = unit(angle);
    return new XY(a * unit.x(), b * unit.y());
  }

  /** The point if it were as wide as high, half of it being 1. */
  private XY unit(double angle) {
    double c = StrictMath.cos(angle);
    double s = StrictMath.sin(angle);
    double r = 1 / power(power(c, exponent) + power(s, exponent), 1 / exponent);
    return new XY(c * r, s * r);
  }

  private static double power(double value, double exponent) {
    double size = Math.abs(value);
    return exponent == 2 ? size * size : StrictMath.pow(size, exponent);
  }

  /** The share of a way from the middle at which it meets the curve; over 1 inside. */
  double edgeShare(double dx, double dy) {
    double power = power(dx / a, exponent) + power(dy / b, exponent);
    return 1 / power(power, 1 / exponent);
  }

  /** Returns true if a point is inside. */
  boolean holds(XY point) {
    return power(point.x() / a, exponent) + power(point.y() / b, exponent) < 1;
  }

  /** The way outwards at an angle, of length 1. */
  XY outwards(double angle) {
    XY unit = unit(angle);
    double x = Math.copySign(power(unit.x(), exponent - 1), unit.x()) / a;
    double y = Math.copySign(power(unit.y(), exponent - 1), unit.y()) / b;
    double length = Math.sqrt(x * x + y * y);
    return new XY(x / length, y / length);
  }

  /** A point off the curve, outwards. */
  XY outside(double angle, double byPx) {
    XY out = outwards(angle);
    return at(angle).plus(out.x() * byPx, out.y() * byPx);
  }

  /** A point along the tangent, onwards for a positive way. */
  XY along(double angle, double byPx) {
    XY out = outwards(angle);
    return at(angle).plus(-out.y() * byPx, out.x() * byPx);
  }

  /**
   * Eight curves that follow it: to 0.001 % of its half size for an ellipse, 0.01 % for an exponent
   * of 2.5, 0.06 % for any.
   */
  Path path() {
    Reaches reaches = exponent == USUAL.exponent ? USUAL : reaches(exponent);
    XY corner = reaches.corner;
    double slant = reaches.second * Math.sqrt(0.5);
    XY side = new XY(1, reaches.first);
    XY beside = new XY(corner.x() + slant, corner.y() - slant);
    List<Path.Step> steps = new ArrayList<>();
    steps.add(new Path.Move(new XY(a, 0)));
    double[][] turns = {{1, 0, 0, 1}, {0, -1, 1, 0}, {-1, 0, 0, -1}, {0, 1, -1, 0}};
    for (double[] turn : turns) {
      steps.add(new Path.Curve(turned(turn, side), turned(turn, beside), turned(turn, corner)));
      steps.add(
          new Path.Curve(
              turned(turn, mirrored(beside)),
              turned(turn, mirrored(side)),
              turned(turn, new XY(0, 1))));
    }
    steps.add(new Path.Close());
    return new Path(steps);
  }

  private static XY mirrored(XY point) {
    return new XY(point.y(), point.x());
  }

  private XY turned(double[] turn, XY point) {
    return new XY(
        a * (turn[0] * point.x() + turn[1] * point.y()),
        b * (turn[2] * point.x() + turn[3] * point.y()));
  }

  /**
   * The reaches of the two control points of the curve from the right end to the corner half way
   * up, along the tangents, with which it misses the unit superellipse least: found by damped least
   * squares.
   */
  private static Reaches reaches(double exponent) {
    Superellipse unit = new Superellipse(1, 1, exponent);
    XY corner = unit.unit(EIGHTH);
    double chord = new XY(1, 0).distanceTo(corner);
    double first = chord / 3;
    double second = chord / 3;
    for (int round = 0; round < ROUNDS; round++) {
      double aa = DAMPING;
      double ab = 0;
      double bb = DAMPING;
      double ar = 0;
      double br = 0;
      for (int i = 1; i <= SAMPLES; i++) {
        double[] miss = unit.miss(corner, first, second, i / (SAMPLES + 1.0));
        aa += miss[1] * miss[1];
        ab += miss[1] * miss[2];
        bb += miss[2] * miss[2];
        ar += miss[1] * miss[0];
        br += miss[2] * miss[0];
      }
      double determinant = aa * bb - ab * ab;
      first -= (ar * bb - br * ab) / determinant;
      second -= (br * aa - ar * ab) / determinant;
    }
    return new Reaches(exponent, corner, first, second);
  }

  /** The distance by which a point of the curve misses, and its derivatives by both reaches. */
  private double[] miss(XY corner, double first, double second, double share) {
    double slant = second * Math.sqrt(0.5);
    XY beside = new XY(corner.x() + slant, corner.y() - slant);
    XY at = new Path.Curve(new XY(1, first), beside, corner).at(new XY(1, 0), share);
    double dx = power(at.x(), exponent - 1);
    double dy = power(at.y(), exponent - 1);
    double steep = Math.sqrt(dx * dx + dy * dy);
    double rest = 1 - share;
    return new double[] {
      (dx * Math.abs(at.x()) + dy * Math.abs(at.y()) - 1) / (exponent * steep),
      3 * rest * rest * share * dy / steep,
      3 * rest * share * share * (dx - dy) * Math.sqrt(0.5) / steep
    };
  }
}
