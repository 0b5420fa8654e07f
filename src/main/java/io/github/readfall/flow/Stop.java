package io.github.readfall.flow;

import io.github.readfall.geom.Box;

/**
 * A balloon as the eye on its way sees it.
 *
 * @param id of the balloon
 * @param panel its place in the script, from 1
 * @param box of its outline, tail left out, in strip pixels
 * @param pinned whether the person placed it
 */
public record Stop(String id, int panel, Box box, boolean pinned) {

  Stop at(Box place) {
    return new Stop(id, panel, place, pinned);
  }
}
