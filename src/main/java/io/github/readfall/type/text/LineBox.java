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
 */
public record LineBox(double left, double right, double top, double bottom) {

  public double width() {
    return right - left;
  }
}
