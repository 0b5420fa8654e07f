package io.github.readfall.art.panels;

/**
 * Rows of cells, even and alike from side to side of the strip: a gutter, or a flat part of a
 * picture that fills the strip's width.
 *
 * @param top first row, in cells
 * @param bottom the row after the last, in cells
 * @param colour of its middle
 * @param straightAbove the share of its upper edge at which something else begins at once, 0 to 1
 * @param straightBelow the same of its lower edge
 * @param run a number that adjacent bands share
 */
record Band(int top, int bottom, int colour, double straightAbove, double straightBelow, int run) {

  /** Evenness of both edges from which a band is most likely a gutter. House default, no source. */
  private static final double STRAIGHT = 0.7;

  boolean isStraight() {
    return straightAbove >= STRAIGHT && straightBelow >= STRAIGHT;
  }

  int height() {
    return bottom - top;
  }
}
