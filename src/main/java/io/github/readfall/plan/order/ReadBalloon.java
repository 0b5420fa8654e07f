package io.github.readfall.plan.order;

import io.github.readfall.base.geom.Box;

/**
 * A balloon on the reading path.
 *
 * @param id of the balloon
 * @param panel its place in the script, from 1
 * @param box of its outline without the tail, in strip pixels
 * @param pinned true if the person placed it
 */
public record ReadBalloon(String id, int panel, Box box, boolean pinned) {

  ReadBalloon at(Box place) {
    return new ReadBalloon(id, panel, place, pinned);
  }
}
