package io.github.readfall.plan.place;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A panel with less room than its balloons need.
 *
 * @param panel its place in the script, from 1
 * @param balloons ids of those in each other's way, in script order
 * @param atPx height of the strip at which to open it, in strip pixels
 * @param byPx how far; empty if no room would help, as between pinned balloons
 */
public record Shortfall(int panel, List<String> balloons, double atPx, OptionalDouble byPx) {
  public Shortfall {
    balloons = List.copyOf(balloons);
  }
}
