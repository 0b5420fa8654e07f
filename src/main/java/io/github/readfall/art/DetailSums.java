package io.github.readfall.art;

import java.util.Arrays;

/** Sums the differences of neighbouring pixels, cell by cell. */
final class DetailSums implements RowTaker {

  /** Width of the strip in cells. House default, no source. */
  private static final int CELLS = 100;

  /** Mean difference of neighbours, in grey levels, that counts as full of detail. */
  private static final double FULL = 24; // house default: close hatching has about as much

  private final int widthPx;
  private final int heightPx;
  private final int cellPx;
  private final int columns;
  private final float[] detail;
  private final int[] above;
  private final int[] here;
  private final long[] sums;

  DetailSums(int widthPx, int heightPx) {
    this.widthPx = widthPx;
    this.heightPx = heightPx;
    this.cellPx = Math.max(1, (int) Math.rint((double) widthPx / CELLS));
    this.columns = (widthPx + cellPx - 1) / cellPx;
    this.detail = new float[columns * ((heightPx + cellPx - 1) / cellPx)];
    this.above = new int[widthPx];
    this.here = new int[widthPx];
    this.sums = new long[columns];
  }

  @Override
  public void row(int y, byte[] rgb) {
    for (int x = 0; x < widthPx; x++) {
      // luma as in ITU-R BT.601, in 256ths
      here[x] =
          (77 * (rgb[3 * x] & 0xff) + 150 * (rgb[3 * x + 1] & 0xff) + 29 * (rgb[3 * x + 2] & 0xff))
              >> 8;
    }
    for (int x = 0; x < widthPx; x++) {
      int across = x > 0 ? Math.abs(here[x] - here[x - 1]) : 0;
      int down = y > 0 ? Math.abs(here[x] - above[x]) : 0;
      sums[x / cellPx] += across + down;
    }
    System.arraycopy(here, 0, above, 0, widthPx);
    if ((y + 1) % cellPx == 0 || y + 1 == heightPx) {
      close(y / cellPx, y % cellPx + 1);
    }
  }

  private void close(int row, int pixelRows) {
    for (int column = 0; column < columns; column++) {
      int width = Math.min(widthPx, (column + 1) * cellPx) - column * cellPx;
      double mean = sums[column] / (2.0 * width * pixelRows);
      detail[row * columns + column] = (float) Math.min(1, mean / FULL);
    }
    Arrays.fill(sums, 0);
  }

  /** The map, once every row has been taken. */
  DetailMap map() {
    return DetailMap.of(cellPx, columns, detail);
  }
}
