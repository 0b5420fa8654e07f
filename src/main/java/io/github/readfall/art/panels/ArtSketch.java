package io.github.readfall.art.panels;

/** A strip's art reduced to a few square cells, each of one colour. */
public final class ArtSketch {

  private final double cellPx;
  private final int columns;
  private final int[] colours;

  private ArtSketch(double cellPx, int columns, int[] colours) {
    this.cellPx = cellPx;
    this.columns = columns;
    this.colours = colours;
  }

  /** The colours of at most {@code most} cells of a grid, evenly spread. */
  static ArtSketch of(CellGrid grid, int most) {
    int step = 1;
    while ((long) (grid.columns() / step) * (grid.rows() / step) > most) {
      step++;
    }
    int columns = Math.max(1, grid.columns() / step);
    int rows = Math.max(1, grid.rows() / step);
    int[] colours = new int[columns * rows];
    for (int i = 0; i < colours.length; i++) {
      colours[i] = mean(grid, i % columns * step, i / columns * step, step);
    }
    return new ArtSketch((double) step * grid.cellPx(), columns, colours);
  }

  private static int mean(CellGrid grid, int column, int row, int step) {
    int red = 0;
    int green = 0;
    int blue = 0;
    int cells = 0;
    for (int y = row; y < Math.min(grid.rows(), row + step); y++) {
      for (int x = column; x < Math.min(grid.columns(), column + step); x++) {
        int colour = grid.colour(grid.index(x, y));
        red += (colour >> 16) & 0xff;
        green += (colour >> 8) & 0xff;
        blue += colour & 0xff;
        cells++;
      }
    }
    return (red / cells) << 16 | (green / cells) << 8 | (blue / cells);
  }

  /** The side of a cell, in strip pixels. */
  public double cellPx() {
    return cellPx;
  }

  public int columns() {
    return columns;
  }

  public int rows() {
    return colours.length / columns;
  }

  /** Red, green and blue of a cell, eight bits each. */
  public int colour(int column, int row) {
    return colours[row * columns + column];
  }
}
