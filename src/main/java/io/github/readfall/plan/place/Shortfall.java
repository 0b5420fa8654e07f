package io.github.readfall.plan.place;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A panel that has not the room its balloons need.
 *
 * @param panel its place in the script, from 1
 * @param balloons ids of those that are in each other's way, in script order
 * @param atPx height of the strip at which to open it, in strip pixels
 * @param byPx how far; empty where no room would help, as between balloons that are pinned
 */
public record Shortfall(int panel, List<String> balloons, double atPx, OptionalDouble byPx) {
  public Shortfall {
    balloons = List.copyOf(balloons);
  }
}
