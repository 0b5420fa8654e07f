package io.github.readfall.script;

/**
 * An emphasised stretch of a cue's plain text.
 *
 * @param start first UTF-16 unit of it
 * @param end the unit after its last; greater than {@code start}
 * @param emphasis of the stretch
 */
public record Span(int start, int end, Emphasis emphasis) {

  public Span {
    if (start < 0 || end <= start) {
      throw new IllegalArgumentException("not a stretch of text: " + start + " to " + end);
    }
  }
}
