package io.github.readfall.art.panels;

import io.github.readfall.art.RowTaker;
import java.util.Arrays;

/** Sums the rows of a strip into cells. */
final class CellSums implements RowTaker {

  private final int widthPx;
  private final int heightPx;
  private final int cellPx;
  private final int columns;
  private final byte[] rgb;
  private final byte[] unevenness;
  private final int[] sums;
  private final long[] squares;

  /** Sums for a strip of this size, in strip pixels, and cells with this side. */
  CellSums(int widthPx, int heightPx, int cellPx) {
    this.widthPx = widthPx;
    this.heightPx = heightPx;
    this.cellPx = cellPx;
    this.columns = (widthPx + cellPx - 1) / cellPx;
    int cells = Math.multiplyExact(columns, (heightPx + cellPx - 1) / cellPx);
    this.rgb = new byte[Math.multiplyExact(3, cells)];
    this.unevenness = new byte[cells];
    this.sums = new int[3 * columns];
    this.squares = new long[columns];
  }

  @Override
  public void row(int y, byte[] row) {
    int at = 0;
    for (int column = 0; column < columns; column++) {
      int end = 3 * Math.min(widthPx, (column + 1) * cellPx);
      add(column, row, at, end);
      at = end;
    }
    if ((y + 1) % cellPx == 0 || y + 1 == heightPx) {
      close(y / cellPx, y % cellPx + 1);
    }
  }

  private void add(int column, byte[] row, int from, int end) {
    int red = 0;
    int green = 0;
    int blue = 0;
    int square = 0;
    for (int i = from; i < end; i += 3) {
      int r = row[i] & 0xff;
      int g = row[i + 1] & 0xff;
      int b = row[i + 2] & 0xff;
      red += r;
      green += g;
      blue += b;
      square += r * r + g * g + b * b;
    }
    sums[3 * column] += red;
    sums[3 * column + 1] += green;
    sums[3 * column + 2] += blue;
    squares[column] += square;
  }

  /** Ends a row of cells that is {@code pixelRows} rows of pixels high. */
  private void close(int cellRow, int pixelRows) {
    for (int column = 0; column < columns; column++) {
      int width = Math.min(widthPx, (column + 1) * cellPx) - column * cellPx;
      double pixels = (double) width * pixelRows;
      int cell = cellRow * columns + column;
      double ofMeans = 0;
      for (int channel = 0; channel < 3; channel++) {
        double mean = sums[3 * column + channel] / pixels;
        rgb[3 * cell + channel] = (byte) Math.round(mean);
        ofMeans += mean * mean;
      }
      double variance = Math.max(0, squares[column] / pixels - ofMeans) / 3;
      unevenness[cell] = (byte) Math.min(255, Math.round(Math.sqrt(variance)));
    }
    Arrays.fill(sums, 0);
    Arrays.fill(squares, 0);
  }

  /** The grid, once every row has been taken. */
  CellGrid grid() {
    return new CellGrid(widthPx, heightPx, cellPx, rgb, unevenness);
  }
}
