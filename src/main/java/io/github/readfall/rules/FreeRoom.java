package io.github.readfall.rules;

import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;

/** Whether there is room for a balloon on a strip. */
public final class FreeRoom {

  private FreeRoom() {}

  /**
   * Whether a balloon would lie inside its panel and the strip, clear of other balloons, of borders
   * and of what must stay clear.
   *
   * @param balloon in the place asked about; the balloon of the same cue is not in its way
   */
  public static boolean isFree(PlacedBalloon balloon, Galley galley) {
    return FreePlace.isFree(balloon, Neighbourhood.of(galley));
  }
}
