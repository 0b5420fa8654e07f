package io.github.readfall.script;

/**
 * A stretch of a script's line.
 *
 * @param kind of the stretch
 * @param start first UTF-16 unit of it in the line
 * @param end the unit after its last; greater than {@code start}
 */
public record LinePart(PartKind kind, int start, int end) {

  public LinePart {
    if (start < 0 || end <= start) {
      throw new IllegalArgumentException("not a stretch of text: " + start + " to " + end);
    }
  }

  /** The same stretch in a text that begins so many units earlier. */
  public LinePart moved(int by) {
    return new LinePart(kind, start + by, end + by);
  }
}
