package io.github.readfall.plan.order;

import io.github.readfall.base.geom.Box;

/**
 * A balloon as the eye on its way sees it.
 *
 * @param id of the balloon
 * @param panel its place in the script, from 1
 * @param box of its outline, tail left out, in strip pixels
 * @param pinned whether the person placed it
 */
public record ReadBalloon(String id, int panel, Box box, boolean pinned) {

  ReadBalloon at(Box place) {
    return new ReadBalloon(id, panel, place, pinned);
  }
}
