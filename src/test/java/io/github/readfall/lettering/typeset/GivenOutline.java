package io.github.readfall.lettering.typeset;

import io.github.readfall.type.text.LineTable;

/**
 * How large a cue can be lettered in an outline that is already there, and what is missing where
 * that is too small.
 *
 * @param scale the largest size at which the text goes in with its margin, over reading size
 * @param fontPx the same as an em
 * @param fits whether that is no less than the least size asked for
 * @param growBy by how much the outline's width and height must grow for the least size; 1 where it
 *     fits
 * @param lettersTooMany how many letters must go from the end for the least size; 0 where it fits
 */
record GivenOutline(double scale, double fontPx, boolean fits, double growBy, int lettersTooMany) {

  /** Sizes below this share of reading size are not looked for: no phone shows them. */
  private static final double SMALLEST = 1.0 / 16;

  /**
   * Fits a cue into an outline of its own shape.
   *
   * @param widthPx of the drawn outline; positive
   * @param heightPx of the drawn outline; positive
   * @param leastScale the least size that will do, over reading size
   */
  static GivenOutline of(ShapedCue cue, double widthPx, double heightPx, double leastScale) {
    Copyfit copyfit = Copyfit.into(cue, widthPx, heightPx);
    LineTable lines = copyfit.linesAt(SMALLEST);
    double scale =
        copyfit.largest(lines).map(fit -> copyfit.scale(fit.enclosed())).orElse(SMALLEST);
    boolean fits = scale >= leastScale;
    return new GivenOutline(
        scale,
        scale * cue.type().fontPx(),
        fits,
        fits ? 1 : leastScale / scale,
        fits ? 0 : copyfit.lettersTooMany(lines, leastScale));
  }
}
