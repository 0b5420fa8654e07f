package io.github.readfall.type.balloon;

import java.util.List;

/**
 * How a text is broken, and the outline it goes into.
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
