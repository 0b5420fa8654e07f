package io.github.readfall.art.panels;

import io.github.readfall.base.geom.Box;
import java.util.ArrayList;
import java.util.List;

/**
 * How well boxes were found.
 *
 * @param panels that there were
 * @param found of them, every edge as near as was asked
 * @param extra boxes that are no panel
 */
record Hits(int panels, int found, int extra) {

  static final double NEAR_PX = 6;
  static final Hits NONE = new Hits(0, 0, 0);

  static Hits of(List<Box> panels, List<Box> boxes) {
    List<Box> left = new ArrayList<>(boxes);
    int found = 0;
    for (Box panel : panels) {
      found += left.removeIf(box -> isNear(panel, box)) ? 1 : 0;
    }
    return new Hits(panels.size(), found, left.size());
  }

  static boolean isNear(Box panel, Box box) {
    return Math.abs(panel.x() - box.x()) <= NEAR_PX
        && Math.abs(panel.y() - box.y()) <= NEAR_PX
        && Math.abs(panel.right() - box.right()) <= NEAR_PX
        && Math.abs(panel.bottom() - box.bottom()) <= NEAR_PX;
  }

  Hits and(Hits other) {
    return new Hits(panels + other.panels, found + other.found, extra + other.extra);
  }

  /** Extra boxes count as if they were panels that were missed. */
  double rate() {
    return (double) found / (panels + extra);
  }
}
