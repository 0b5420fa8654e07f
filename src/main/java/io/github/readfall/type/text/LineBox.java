package io.github.readfall.type.text;

/**
 * The box of a line: from its left to its right end, with letterspacing and overhanging ink, and
 * from the top to the bottom of its content. Strip pixels from the pen's start on the baseline, y
 * downwards.
 *
 * @param left not more than 0
 * @param right not less than the advance
 * @param top negative above the baseline
 * @param bottom positive below it
 * @param balancePx part of the width that is empty: it makes up for signs at the other end, which
 *     weigh less than letters; not negative
 */
public record LineBox(double left, double right, double top, double bottom, double balancePx) {

  /** A line that is centred as it is. */
  public LineBox(double left, double right, double top, double bottom) {
    this(left, right, top, bottom, 0);
  }

  /**
   * The same line with empty width before its first letter, so that its middle is where the eye
   * sees it.
   *
   * @param rightToLeft whether it is read from the right
   */
  LineBox balanced(double px, boolean rightToLeft) {
    return rightToLeft
        ? new LineBox(left, right + px, top, bottom, px)
        : new LineBox(left - px, right, top, bottom, px);
  }

  public double width() {
    return right - left;
  }
}
