package io.github.readfall.type.text;

/**
 * What a line takes up: from its left to its right end, letterspacing and overhanging ink included,
 * and from the top to the bottom of what is in it. Strip pixels from the pen's start on the
 * baseline, y downwards.
 *
 * @param left not more than 0
 * @param right not less than the pen's way
 * @param top negative above the baseline
 * @param bottom positive below it
 */
public record LineBox(double left, double right, double top, double bottom) {

  public double width() {
    return right - left;
  }
}
