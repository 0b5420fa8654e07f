package io.github.readfall.plan.order;

import io.github.readfall.base.geom.XY;

/**
 * A point where the eye comes by.
 *
 * @param at in strip pixels
 * @param panel in which it is, by its place in the script
 * @param balloon id of the balloon whose middle it is; empty where the eye enters the panel
 */
public record PathPoint(XY at, int panel, String balloon) {

  public boolean entersPanel() {
    return balloon.isEmpty();
  }
}
