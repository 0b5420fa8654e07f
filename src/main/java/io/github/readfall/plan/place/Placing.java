package io.github.readfall.plan.place;

import io.github.readfall.strip.Layout;
import java.util.List;

/**
 * The result of placing.
 *
 * @param layout with a box for every balloon that is set and whose panel has a place, and a tip for
 *     every tail
 * @param shortfalls panels without enough room, from top to bottom
 */
public record Placing(Layout layout, List<Shortfall> shortfalls) {
  public Placing {
    shortfalls = List.copyOf(shortfalls);
  }
}
