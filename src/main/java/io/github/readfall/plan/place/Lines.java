package io.github.readfall.plan.place;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import java.awt.geom.Line2D;

/** Tests straight lines against boxes and each other. */
final class Lines {

  private Lines() {}

  /** Returns true if a line has a point in a box. */
  static boolean meet(XY from, XY to, Box box) {
    if (box.covers(from) || box.covers(to)) {
      return true;
    }
    if (Math.max(from.x(), to.x()) < box.x()
        || Math.min(from.x(), to.x()) > box.right()
        || Math.max(from.y(), to.y()) < box.y()
        || Math.min(from.y(), to.y()) > box.bottom()) {
      return false;
    }
    return Line2D.linesIntersect(
            from.x(), from.y(), to.x(), to.y(), box.x(), box.y(), box.right(), box.bottom())
        || Line2D.linesIntersect(
            from.x(), from.y(), to.x(), to.y(), box.right(), box.y(), box.x(), box.bottom());
  }

  /** The least distance between two lines. */
  static double distance(XY a, XY b, XY c, XY d) {
    if (Line2D.linesIntersect(a.x(), a.y(), b.x(), b.y(), c.x(), c.y(), d.x(), d.y())) {
      return 0;
    }
    return Math.min(
        Math.min(distance(a, b, c), distance(a, b, d)),
        Math.min(distance(c, d, a), distance(c, d, b)));
  }

  private static double distance(XY from, XY to, XY point) {
    return Line2D.ptSegDist(from.x(), from.y(), to.x(), to.y(), point.x(), point.y());
  }
}
