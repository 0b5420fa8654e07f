package io.github.readfall.plan.order;

import io.github.readfall.base.geom.XY;

/**
 * A point of the reading path.
 *
 * @param at in strip pixels
 * @param panel its place in the script, from 1
 * @param balloon id of the balloon whose middle it is; empty where the path enters the panel
 */
public record PathPoint(XY at, int panel, String balloon) {

  public boolean entersPanel() {
    return balloon.isEmpty();
  }
}
