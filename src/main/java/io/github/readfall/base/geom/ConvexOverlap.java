package io.github.readfall.base.geom;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Computes how far one convex polygon has sunk into another.
 *
 * <p>A shift takes the first off the second exactly if it is outside the second enlarged by the
 * first turned about (their Minkowski difference: Lozano-Pérez 1983, IEEE Transactions on Computers
 * C-32(2)). The sides of that polygon are the sides of both in order of direction, so the shortest
 * shift is the shortest from the origin to one of them.
 */
final class ConvexOverlap {

  private final List<XY> still;
  private final List<XY> turned;

  /**
   * Two polygons.
   *
   * @param moved corners in order, either way round; fewer than three are no polygon
   * @param still the same of the other
   */
  ConvexOverlap(List<XY> moved, List<XY> still) {
    this.still = fromTheLowest(still);
    this.turned =
        fromTheLowest(moved.stream().map(corner -> new XY(-corner.x(), -corner.y())).toList());
  }

  /** The shortest shift of the first that takes it off the second; none if they do not overlap. */
  XY shiftOff() {
    if (still.size() < 3 || turned.size() < 3) {
      return new XY(0, 0);
    }
    XY corner = still.get(0).plus(turned.get(0).x(), turned.get(0).y());
    XY shortest = new XY(0, 0);
    double shortestPx = Double.POSITIVE_INFINITY;
    for (XY side : sidesByDirection()) {
      double length = Math.sqrt(side.x() * side.x() + side.y() * side.y());
      XY outwards = new XY(side.y() / length, -side.x() / length);
      double px = corner.x() * outwards.x() + corner.y() * outwards.y();
      if (px < shortestPx) {
        shortestPx = px;
        shortest = new XY(outwards.x() * px, outwards.y() * px);
      }
      corner = corner.plus(side.x(), side.y());
    }
    return shortestPx > 0 ? shortest : new XY(0, 0);
  }

  private List<XY> sidesByDirection() {
    List<XY> ones = sides(still);
    List<XY> others = sides(turned);
    List<XY> merged = new ArrayList<>(ones.size() + others.size());
    int i = 0;
    int j = 0;
    while (i < ones.size() || j < others.size()) {
      boolean takeOne =
          j == others.size() || (i < ones.size() && cross(ones.get(i), others.get(j)) >= 0);
      merged.add(takeOne ? ones.get(i++) : others.get(j++));
    }
    return merged;
  }

  private static List<XY> sides(List<XY> corners) {
    List<XY> sides = new ArrayList<>(corners.size());
    for (int i = 0; i < corners.size(); i++) {
      XY from = corners.get(i);
      XY to = corners.get((i + 1) % corners.size());
      if (!from.equals(to)) {
        sides.add(new XY(to.x() - from.x(), to.y() - from.y()));
      }
    }
    return sides;
  }

  /** The corners turning from x towards y, from the one with the least y; of those, the least x. */
  private static List<XY> fromTheLowest(List<XY> corners) {
    List<XY> ring = new ArrayList<>(corners);
    if (twiceTheArea(ring) < 0) {
      Collections.reverse(ring);
    }
    int lowest = 0;
    for (int i = 1; i < ring.size(); i++) {
      XY at = ring.get(i);
      XY least = ring.get(lowest);
      boolean lower = at.y() < least.y() || (at.y() == least.y() && at.x() < least.x());
      lowest = lower ? i : lowest;
    }
    Collections.rotate(ring, -lowest);
    return ring;
  }

  private static double twiceTheArea(List<XY> ring) {
    double twice = 0;
    for (int i = 0; i < ring.size(); i++) {
      twice += cross(ring.get(i), ring.get((i + 1) % ring.size()));
    }
    return twice;
  }

  private static double cross(XY a, XY b) {
    return a.x() * b.y() - a.y() * b.x();
  }
}
