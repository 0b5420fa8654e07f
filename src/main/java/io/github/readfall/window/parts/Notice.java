package io.github.readfall.window.parts;

import java.util.List;

/**
 * Something the person should know, with the ways on.
 *
 * @param topic what it is about; a newer notice about the same takes its place
 * @param sentence plain
 * @param ways what can be done, the likeliest first; it can be put away as well
 */
public record Notice(String topic, String sentence, List<Way> ways) {

  /**
   * A way on.
   *
   * @param label what the button says
   * @param go what it does; the notice is put away before
   */
  public record Way(String label, Runnable go) {}

  public Notice {
    ways = List.copyOf(ways);
  }

  /** A notice that only tells. */
  public static Notice of(String topic, String sentence) {
    return new Notice(topic, sentence, List.of());
  }
}
