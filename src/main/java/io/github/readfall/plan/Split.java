package io.github.readfall.plan;

import java.util.List;

/**
 * A split of an episode into several parts.
 *
 * @param parts in script order, at least two
 * @param limitPx greatest height that a part should have, in strip pixels
 */
public record Split(List<Part> parts, double limitPx) {

  /** As many as there are letters to name them. */
  public static final int MOST_PARTS = 26;

  /**
   * One part.
   *
   * @param firstPanel its first panel's place in the script, from 1
   * @param lastPanel its last panel's place in the script
   * @param heightPx as an episode of its own, in strip pixels
   * @param words in it
   * @param seconds needed to read them
   * @param reason one plain sentence: why it begins there
   */
  public record Part(
      int firstPanel, int lastPanel, double heightPx, int words, double seconds, String reason) {}

  public Split {
    parts = List.copyOf(parts);
  }

  /** Returns true if no part is above the limit. */
  public boolean fits() {
    return parts.stream().allMatch(part -> part.heightPx() <= limitPx);
  }

  /** The first panel of every part. */
  public List<Integer> firstPanels() {
    return parts.stream().map(Part::firstPanel).toList();
  }
}
