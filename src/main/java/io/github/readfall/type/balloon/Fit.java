package io.github.readfall.type.balloon;

import java.util.List;

/**
 * The breaks of a text, and the outline round it.
 *
 * @param lastSegments for each line, top to bottom, its last segment
 * @param enclosed the outline
 */
public record Fit(List<Integer> lastSegments, Enclosed enclosed) {
  public Fit {
    lastSegments = List.copyOf(lastSegments);
  }

  /** A line's first segment. */
  public int firstSegment(int line) {
    return line == 0 ? 0 : lastSegments.get(line - 1) + 1;
  }
}
