package io.github.readfall.proof;

import io.github.readfall.galley.Galley;
import io.github.readfall.place.Shortfall;
import io.github.readfall.strip.Layout;
import java.util.List;

/**
 * A strip put together.
 *
 * @param galley every balloon in its place
 * @param layout the same as it is written down
 * @param shortfalls panels without enough room, from top to bottom
 */
record Composed(Galley galley, Layout layout, List<Shortfall> shortfalls) {
  Composed {
    shortfalls = List.copyOf(shortfalls);
  }

  /** The same strip with other panels without enough room. */
  Composed lacking(List<Shortfall> others) {
    return new Composed(galley, layout, others);
  }
}
