package io.github.readfall.plan.place;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.type.balloon.ShapeKind;

/**
 * The visible part of a tail as a straight line.
 *
 * @param exit where it leaves the outline
 * @param tip where it ends
 */
record Pointer(XY exit, XY tip) {

  /** The point where a line from a balloon's middle to a target leaves its outline. */
  static XY exit(ShapeKind shape, Box box, XY target) {
    XY middle = box.centre();
    double dx = Math.abs(target.x() - middle.x()) / (box.width() / 2);
    double dy = Math.abs(target.y() - middle.y()) / (box.height() / 2);
    double share = shape.isRound() ? 1 / Math.sqrt(dx * dx + dy * dy) : 1 / Math.max(dx, dy);
    return share < 1 ? middle.towards(target, share) : target;
  }

  /** A pointer in the direction of a target, with a length. */
  static Pointer towards(XY exit, XY target, double lengthPx) {
    double distance = Math.max(1e-6, exit.distanceTo(target));
    return new Pointer(exit, exit.towards(target, lengthPx / distance));
  }

  double lengthPx() {
    return exit.distanceTo(tip);
  }

  /** Returns true if it comes nearer to a box than allowed. */
  boolean meets(Box box, double clearPx) {
    return Lines.meet(exit, tip, box.grownBy(clearPx));
  }

  /** Returns true if it crosses another, or comes nearer than allowed. */
  boolean meets(Pointer other, double clearPx) {
    return Lines.distance(exit, tip, other.exit, other.tip) < clearPx;
  }

  Box bounds() {
    return Box.ofEdges(
        Math.min(exit.x(), tip.x()),
        Math.min(exit.y(), tip.y()),
        Math.max(exit.x(), tip.x()),
        Math.max(exit.y(), tip.y()));
  }
}
