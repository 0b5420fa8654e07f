package io.github.readfall.art.panels;

import io.github.readfall.base.geom.Box;
import java.util.List;

/**
 * The four sides of a panel.
 *
 * @param parted true if a balloon connected it to another, so that it had to be cut off
 */
record PanelSides(
    BorderLine top, BorderLine bottom, BorderLine left, BorderLine right, boolean parted) {

  /** House default, found on generated strips. */
  static final double GUESSED = 0.45;

  /** Top, bottom, left, right. */
  List<BorderLine> borders() {
    return List.of(top, bottom, left, right);
  }

  /** The box round it, in whole strip pixels. */
  Box box() {
    double leftPx = Math.rint(left.outermost());
    double topPx = Math.rint(top.outermost());
    return Box.ofEdges(
        leftPx,
        topPx,
        Math.max(leftPx + 1, Math.rint(right.outermost())),
        Math.max(topPx + 1, Math.rint(bottom.outermost())));
  }

  /** The share of the least straight side. */
  double leastShare() {
    return borders().stream().mapToDouble(border -> border.line().share()).min().orElse(0);
  }

  /** The number of sides that are not straight enough to be certain. */
  int guessed() {
    return (int) borders().stream().filter(border -> border.line().share() < GUESSED).count();
  }
}
