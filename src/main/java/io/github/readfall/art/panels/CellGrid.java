package io.github.readfall.art.panels;

/** A strip reduced to square cells: the mean colour of each, and how uneven it is. */
final class CellGrid {

  private static final int LEVELS = 256;

  private final int widthPx;
  private final int heightPx;
  private final int cellPx;
  private final int columns;
  private final int rows;
  private final byte[] rgb;
  private final byte[] unevenness;

  /**
   * A grid; the arrays are not copied and must not be written to afterwards.
   *
   * @param widthPx of the strip
   * @param heightPx of the strip
   * @param cellPx the side of a cell, in strip pixels; positive
   * @param rgb red, green and blue of each cell, row by row
   * @param unevenness of each cell: the standard deviation of its pixels, in grey levels
   */
  CellGrid(int widthPx, int heightPx, int cellPx, byte[] rgb, byte[] unevenness) {
    this.widthPx = widthPx;
    this.heightPx = heightPx;
    this.cellPx = cellPx;
    this.columns = (widthPx + cellPx - 1) / cellPx;
    this.rows = (heightPx + cellPx - 1) / cellPx;
    this.rgb = rgb;
    this.unevenness = unevenness;
  }

  int widthPx() {
    return widthPx;
  }

  int heightPx() {
    return heightPx;
  }

  int cellPx() {
    return cellPx;
  }

  int columns() {
    return columns;
  }

  int rows() {
    return rows;
  }

  int index(int column, int row) {
    return row * columns + column;
  }

  int unevenness(int cell) {
    return unevenness[cell] & 0xff;
  }

  /** Red, green and blue, eight bits each. */
  int colour(int cell) {
    return (rgb[3 * cell] & 0xff) << 16
        | (rgb[3 * cell + 1] & 0xff) << 8
        | (rgb[3 * cell + 2] & 0xff);
  }

  /** The unevenness that this share of all cells does not exceed, in grey levels. */
  int unevennessOf(double share) {
    int[] counts = new int[LEVELS];
    for (byte level : unevenness) {
      counts[level & 0xff]++;
    }
    double left = share * unevenness.length;
    int level = 0;
    while (level < LEVELS - 1 && left > counts[level]) {
      left -= counts[level];
      level++;
    }
    return level;
  }
}
