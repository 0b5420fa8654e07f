package io.github.readfall.art;

import io.github.readfall.base.geom.Box;

/**
 * Tells how much there is to see in each part of a strip's art: where it is calm, a balloon covers
 * little. Sums over all cells above and to the left (Crow 1984, SIGGRAPH 18(3)) give the mean of
 * any box from four of them.
 */
public final class DetailMap {

  /** The map of a strip without art, or whose art was not read. */
  public static final DetailMap NONE = new DetailMap(1, 1, new double[4]);

  private final double cellPx;
  private final int columns;
  private final int rows;
  private final double[] sums; // one column and one row more than there are cells

  private DetailMap(double cellPx, int columns, double[] sums) {
    this.cellPx = cellPx;
    this.columns = columns;
    this.rows = sums.length / (columns + 1) - 1;
    this.sums = sums;
  }

  /**
   * A map of cells.
   *
   * @param cellPx the side of a cell, in strip pixels; positive
   * @param detail of each cell, row by row, from 0 for a flat colour to 1
   */
  static DetailMap of(double cellPx, int columns, float[] detail) {
    int rows = detail.length / columns;
    double[] sums = new double[(columns + 1) * (rows + 1)];
    for (int row = 0; row < rows; row++) {
      double inRow = 0;
      for (int column = 0; column < columns; column++) {
        inRow += detail[row * columns + column];
        sums[(row + 1) * (columns + 1) + column + 1] =
            sums[row * (columns + 1) + column + 1] + inRow;
      }
    }
    return new DetailMap(cellPx, columns, sums);
  }

  /**
   * Reads the art of a strip once, from the top.
   *
   * @throws UnreadableArt if a page cannot be read to its end
   */
  public static DetailMap of(StripRows art) throws UnreadableArt {
    if (art.heightPx() == 0) {
      return NONE;
    }
    DetailSums sums = new DetailSums(art.widthPx(), art.heightPx());
    art.pour(sums);
    return sums.map();
  }

  /** The mean detail in a box of the strip, from 0 to 1; 0 outside the art. */
  public double detail(Box box) {
    int left = column(Math.floor(box.x() / cellPx));
    int right = column(Math.ceil(box.right() / cellPx));
    int top = row(Math.floor(box.y() / cellPx));
    int bottom = row(Math.ceil(box.bottom() / cellPx));
    int cells = (right - left) * (bottom - top);
    return cells <= 0
        ? 0
        : (sum(right, bottom) - sum(left, bottom) - sum(right, top) + sum(left, top)) / cells;
  }

  private int column(double at) {
    return (int) Math.max(0, Math.min(columns, at));
  }

  private int row(double at) {
    return (int) Math.max(0, Math.min(rows, at));
  }

  private double sum(int column, int row) {
    return sums[row * (columns + 1) + column];
  }
}
