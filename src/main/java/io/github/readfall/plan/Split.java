package io.github.readfall.plan;

import java.util.List;

/**
 * An episode parted into several.
 *
 * @param parts in script order, at least two
 * @param limitPx the most that a part should be tall, in strip pixels
 */
public record Split(List<Part> parts, double limitPx) {

  /** As many as there are letters to name them by. */
  public static final int MOST_PARTS = 26;

  /**
   * One part.
   *
   * @param firstPanel its first panel's place in the script, from 1
   * @param lastPanel its last panel's
   * @param heightPx as an episode of its own, in strip pixels
   * @param words in it
   * @param seconds they are read
   * @param reason one plain sentence: why it begins where it does
   */
  public record Part(
      int firstPanel, int lastPanel, double heightPx, int words, double seconds, String reason) {}

  public Split {
    parts = List.copyOf(parts);
  }

  /** Whether no part is above the limit. */
  public boolean fits() {
    return parts.stream().allMatch(part -> part.heightPx() <= limitPx);
  }

  /** The first panel of every part. */
  public List<Integer> firstPanels() {
    return parts.stream().map(Part::firstPanel).toList();
  }
}
