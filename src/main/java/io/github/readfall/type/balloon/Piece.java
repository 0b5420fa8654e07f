package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;

/**
 * A stretch of an outline: a curve with its start.
 *
 * @param straight true if it is drawn as a line
 */
record Piece(XY from, Path.Curve curve, boolean straight) {

  private static final int SAMPLES = 12;
  private static final double SAME_PX = 1e-7;

  static Piece line(XY from, XY to) {
    return new Piece(
        from, new Path.Curve(from.towards(to, 1.0 / 3), from.towards(to, 2.0 / 3), to), true);
  }

  XY to() {
    return curve.to();
  }

  /** The step that draws it. */
  Path.Step step() {
    return straight ? new Path.Line(to()) : curve;
  }

  /** Its length, to a thousandth. */
  double lengthPx() {
    double length = 0;
    XY before = from;
    for (int i = 1; i <= SAMPLES; i++) {
      XY at = curve.at(from, (double) i / SAMPLES);
      length += before.distanceTo(at);
      before = at;
    }
    return length;
  }

  /** The share of the curve that has a length, counted from its start. */
  double share(double lengthPx) {
    double length = 0;
    XY before = from;
    for (int i = 1; i <= SAMPLES; i++) {
      XY at = curve.at(from, (double) i / SAMPLES);
      double step = before.distanceTo(at);
      if (length + step >= lengthPx) {
        return (i - 1 + (lengthPx - length) / step) / SAMPLES;
      }
      length += step;
      before = at;
    }
    return 1;
  }

  /** The part from its start to a share, by de Casteljau's construction. */
  Piece until(double share) {
    XY first = from.towards(curve.control1(), share);
    XY middle = curve.control1().towards(curve.control2(), share);
    return new Piece(
        from, new Path.Curve(first, first.towards(middle, share), curve.at(from, share)), straight);
  }

  /** The part from a share to its end. */
  Piece since(double share) {
    return reversed().until(1 - share).reversed();
  }

  Piece reversed() {
    return new Piece(to(), new Path.Curve(curve.control2(), curve.control1(), from), straight);
  }

  /** The way it begins, of length 1. */
  XY way() {
    XY towards = curve.control1();
    towards = from.distanceTo(towards) > SAME_PX ? towards : curve.control2();
    towards = from.distanceTo(towards) > SAME_PX ? towards : to();
    double length = Math.max(SAME_PX, from.distanceTo(towards));
    return new XY((towards.x() - from.x()) / length, (towards.y() - from.y()) / length);
  }

  /** The way it ends, of length 1. */
  XY endWay() {
    XY back = reversed().way();
    return new XY(-back.x(), -back.y());
  }
}
