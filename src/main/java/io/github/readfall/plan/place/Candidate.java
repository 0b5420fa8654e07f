package io.github.readfall.plan.place;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import java.util.Optional;

/**
 * A possible place of an item.
 *
 * @param at its top left corner
 * @param box of the whole item
 * @param lastBox of the balloon with the tail
 * @param tail the shortest tail that would do
 * @param reach bounds of all of it
 * @param cost of the place by itself, the less the better; {@link Costs#HARD} for each rule broken
 */
record Candidate(XY at, Box box, Box lastBox, Optional<Pointer> tail, Box reach, double cost) {}
