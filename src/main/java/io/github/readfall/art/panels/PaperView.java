package io.github.readfall.art.panels;

import java.util.BitSet;
import java.util.OptionalInt;

/**
 * The cells of a strip as seen from one side of a panel: along it, and across it.
 *
 * @param paper the cells that are paper
 */
record PaperView(CellGrid grid, BitSet paper, Side side) {

  /** Distance outside a line within which paper is searched, in cells. */
  private static final int OUT = 4;

  /** Depth inside a line that is examined, in cells. */
  private static final int IN = 3;

  int cellPx() {
    return grid.cellPx();
  }

  int colour(int cell) {
    return grid.colour(cell);
  }

  /** Returns true if a place across is next to the end of the strip. */
  boolean isAtEnd(double acrossPx) {
    double size = side.isLevel() ? grid.heightPx() : grid.widthPx();
    return acrossPx < grid.cellPx() || acrossPx > size - grid.cellPx();
  }

  /** The first cell of paper on the way out from a line. */
  OptionalInt paper(int alongPx, int linePx) {
    int along = alongPx / grid.cellPx();
    int across = Math.floorDiv(linePx, grid.cellPx());
    for (int out = 0; out <= OUT; out++) {
      if (isPaper(along, across - side.inward() * out)) {
        return OptionalInt.of(cell(along, across - side.inward() * out));
      }
    }
    return OptionalInt.empty();
  }

  /** The end of the paper that a cell is part of, on the way out; in strip pixels. */
  int endOfPaper(int cell) {
    int column = cell % grid.columns();
    int row = cell / grid.columns();
    int along = side.isLevel() ? column : row;
    int from = side.isLevel() ? row : column;
    int across = from;
    while (Math.abs(from - across) <= OUT && isPaper(along, across - side.inward())) {
      across -= side.inward();
    }
    return (side.inward() > 0 ? across : across + 1) * grid.cellPx();
  }

  /** The greatest difference from a colour at a line and inside it, in levels. */
  int contrast(int alongPx, int linePx, int colour) {
    int along = alongPx / grid.cellPx();
    int across = Math.floorDiv(linePx, grid.cellPx());
    int most = 0;
    for (int in = -1; in <= IN; in++) {
      int place = across + side.inward() * in;
      if (isInside(along, place)) {
        most = Math.max(most, Colours.distance(grid.colour(cell(along, place)), colour));
      }
    }
    return most;
  }

  private boolean isPaper(int along, int across) {
    return isInside(along, across) && paper.get(cell(along, across));
  }

  private boolean isInside(int along, int across) {
    int column = side.isLevel() ? along : across;
    int row = side.isLevel() ? across : along;
    return column >= 0 && row >= 0 && column < grid.columns() && row < grid.rows();
  }

  private int cell(int along, int across) {
    return side.isLevel() ? grid.index(along, across) : grid.index(across, along);
  }
}
