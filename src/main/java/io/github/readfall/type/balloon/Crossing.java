package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import java.awt.geom.PathIterator;

/** Finds where a ray leaves an outline. */
final class Crossing {

  private static final double FLATNESS_PX = 0.1;

  private Crossing() {}

  /**
   * The last place where the ray from one point through another crosses an outline, over the
   * distance of the two; 0 if it never does.
   */
  static double last(Path outline, XY from, XY through) {
    double dx = through.x() - from.x();
    double dy = through.y() - from.y();
    double last = 0;
    double[] c = new double[6];
    XY start = from;
    XY pen = from;
    for (PathIterator it = outline.toShape().getPathIterator(null, FLATNESS_PX);
        !it.isDone();
        it.next()) {
      int kind = it.currentSegment(c);
      XY to = kind == PathIterator.SEG_CLOSE ? start : new XY(c[0], c[1]);
      if (kind == PathIterator.SEG_MOVETO) {
        start = to;
      } else {
        last = Math.max(last, share(from, dx, dy, pen, to));
      }
      pen = to;
    }
    return last;
  }

  /** The share of the ray at which it crosses a straight piece; 0 if it does not. */
  private static double share(XY from, double dx, double dy, XY a, XY b) {
    double before = dx * (a.y() - from.y()) - dy * (a.x() - from.x());
    double after = dx * (b.y() - from.y()) - dy * (b.x() - from.x());
    if (before * after > 0 || before == after) {
      return 0;
    }
    XY at = a.towards(b, before / (before - after));
    double length = dx * dx + dy * dy;
    return ((at.x() - from.x()) * dx + (at.y() - from.y()) * dy) / length;
  }
}
