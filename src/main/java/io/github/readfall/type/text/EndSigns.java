package io.github.readfall.type.text;

/**
 * The signs at a line's end: stops, commas, closing quotes, an ellipsis, a dash. They are lighter
 * than letters, so lines are centred as if they were half as wide: common practice. Full-width
 * signs are none of them: those give up half of their width at a line's end.
 */
final class EndSigns {

  /** The weight of their width beside that of letters. */
  private static final double WEIGHT = 0.5;

  private static final String SIGNS = ".,;:…-–—‐’”»›\"'؛،।";

  private EndSigns() {}

  /** The index of the first of the signs that end a stretch; its end if there are none. */
  static int start(String text, int from, int to) {
    int start = to;
    while (start > from && SIGNS.indexOf(text.charAt(start - 1)) >= 0) {
      start--;
    }
    return start == from ? to : start;
  }

  /** The empty width at the other end of a line that makes up for signs of a width. */
  static double balancePx(double signsPx) {
    return Math.max(0, signsPx) * (1 - WEIGHT);
  }
}
