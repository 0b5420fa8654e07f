package io.github.readfall.art.panels;

import java.util.BitSet;

/**
 * Connected cells, by the box round them. All in cells.
 *
 * @param left column of its box in the grid
 * @param top row of its box in the grid
 * @param width of its box; positive
 * @param height of its box; positive
 * @param cells of the box that belong to it, row by row; never changed
 */
record Piece(int left, int top, int width, int height, BitSet cells) {

  boolean has(int column, int row) {
    return cells.get(row * width + column);
  }

  int right() {
    return left + width;
  }

  int bottom() {
    return top + height;
  }

  /** The same piece mirrored at the diagonal: its columns are rows. */
  Piece turned() {
    BitSet turned = new BitSet(width * height);
    for (int i = cells.nextSetBit(0); i >= 0; i = cells.nextSetBit(i + 1)) {
      turned.set(i % width * height + i / width);
    }
    return new Piece(
        /* left= */ top, /* top= */ left, /* width= */ height, /* height= */ width, turned);
  }

  /** The same piece upside down. */
  Piece flipped() {
    BitSet flipped = new BitSet(width * height);
    for (int i = cells.nextSetBit(0); i >= 0; i = cells.nextSetBit(i + 1)) {
      flipped.set((height - 1 - i / width) * width + i % width);
    }
    return new Piece(left, top, width, height, flipped);
  }

  /** The number of its cells in a row. */
  int count(int row) {
    return cells.get(row * width, (row + 1) * width).cardinality();
  }

  /** Returns true if the other's box is inside this one's, except for a small share. */
  boolean holds(Piece other, double share) {
    long across = Math.min(right(), other.right()) - (long) Math.max(left, other.left);
    long down = Math.min(bottom(), other.bottom()) - (long) Math.max(top, other.top);
    return across > 0 && down > 0 && across * down >= share * other.width * other.height;
  }

  /**
   * Adds its cells to those of a grid.
   *
   * @param columns of the grid
   */
  void addTo(BitSet grid, int columns) {
    for (int i = cells.nextSetBit(0); i >= 0; i = cells.nextSetBit(i + 1)) {
      grid.set((top + i / width) * columns + left + i % width);
    }
  }

  /** First cell of a column from above, or -1. */
  int first(int column) {
    for (int row = 0; row < height; row++) {
      if (has(column, row)) {
        return row;
      }
    }
    return -1;
  }

  /** Last cell of a column from above, or -1. */
  int last(int column) {
    for (int row = height - 1; row >= 0; row--) {
      if (has(column, row)) {
        return row;
      }
    }
    return -1;
  }

  /** The piece made of some of its cells; at least one. */
  Piece part(BitSet some) {
    int first = width;
    int end = 0;
    for (int i = some.nextSetBit(0); i >= 0; i = some.nextSetBit(i + 1)) {
      first = Math.min(first, i % width);
      end = Math.max(end, i % width + 1);
    }
    int above = some.nextSetBit(0) / width;
    int below = (some.length() - 1) / width + 1;
    BitSet moved = new BitSet();
    for (int i = some.nextSetBit(0); i >= 0; i = some.nextSetBit(i + 1)) {
      moved.set((i / width - above) * (end - first) + i % width - first);
    }
    return new Piece(left + first, top + above, end - first, below - above, moved);
  }
}
