package io.github.readfall.type.text;

/**
 * A stretch of one face and one direction.
 *
 * @param start first UTF-16 unit
 * @param end one past the last
 * @param type face and size
 * @param level its embedding level (UAX #9); odd is right to left
 */
record Run(int start, int end, SizedFace type, int level) {

  boolean rightToLeft() {
    return (level & 1) != 0;
  }

  /** The part of this run inside a range that it overlaps. */
  Run within(int from, int to) {
    return new Run(Math.max(start, from), Math.min(end, to), type, level);
  }

  boolean overlaps(int from, int to) {
    return start < to && from < end;
  }

  Run atLevel(int other) {
    return new Run(start, end, type, other);
  }
}
