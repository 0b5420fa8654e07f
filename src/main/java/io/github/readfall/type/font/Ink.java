package io.github.readfall.type.font;

/**
 * The bounds of what a glyph really paints, in design units from its origin, y upwards.
 *
 * @param left leftmost ink
 * @param bottom lowest ink
 * @param right rightmost ink
 * @param top highest ink
 */
public record Ink(double left, double bottom, double right, double top) {

  /** A glyph that paints nothing, such as a space. */
  public static final Ink NONE =
      new Ink(
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.NEGATIVE_INFINITY,
          Double.NEGATIVE_INFINITY);

  public boolean isEmpty() {
    return left > right;
  }

  /** Height of the ink; 0 if there is none. */
  public double height() {
    return isEmpty() ? 0 : top - bottom;
  }
}
