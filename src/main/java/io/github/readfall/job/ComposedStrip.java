package io.github.readfall.job;

import io.github.readfall.plan.place.Shortfall;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.galley.Galley;
import java.util.List;

/**
 * A strip put together.
 *
 * @param galley every balloon in its place
 * @param layout the same as it is written down
 * @param shortfalls panels without enough room, from top to bottom
 */
record ComposedStrip(Galley galley, Layout layout, List<Shortfall> shortfalls) {
  ComposedStrip {
    shortfalls = List.copyOf(shortfalls);
  }

  /** The same strip with other panels that lack room. */
  ComposedStrip lacking(List<Shortfall> others) {
    return new ComposedStrip(galley, layout, others);
  }
}
