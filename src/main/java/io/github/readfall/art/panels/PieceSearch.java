package io.github.readfall.art.panels;

import io.github.readfall.base.OneCall;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/** Finds the connected components of everything that is not background; corners connect. */
@OneCall
final class PieceSearch {

  private static final int FIRST_ROOM = 1024;

  private final int columns;
  private final int rows;
  private final BitSet open; // not background, and in no piece yet
  private int[] members = new int[FIRST_ROOM]; // of the present piece
  private int count;
  private int left;
  private int right;
  private int top;
  private int bottom;

  private PieceSearch(int columns, int rows, BitSet others) {
    this.columns = columns;
    this.rows = rows;
    this.open = (BitSet) others.clone();
    open.flip(0, columns * rows);
  }

  /**
   * The pieces by their first cells.
   *
   * @param least size below which a piece is left out, across and down, in cells
   */
  static List<Piece> of(CellGrid grid, BitSet background, int least) {
    return new PieceSearch(grid.columns(), grid.rows(), background).all(least);
  }

  /** The pieces of a piece's box that do not belong to it, without those that are too small. */
  static List<Piece> around(Piece piece, int least) {
    return new PieceSearch(piece.width(), piece.height(), piece.cells())
        .all(least).stream()
            .map(
                inBox ->
                    new Piece(
                        piece.left() + inBox.left(),
                        piece.top() + inBox.top(),
                        inBox.width(),
                        inBox.height(),
                        inBox.cells()))
            .toList();
  }

  private List<Piece> all(int least) {
    List<Piece> pieces = new ArrayList<>();
    for (int first = open.nextSetBit(0); first >= 0; first = open.nextSetBit(first)) {
      collect(first);
      if (right - left >= least || bottom - top >= least) {
        pieces.add(piece());
      }
    }
    return pieces;
  }

  private void collect(int first) {
    left = columns;
    right = 0;
    top = rows;
    bottom = 0;
    count = 0;
    take(first);
    for (int i = 0; i < count; i++) {
      int column = members[i] % columns;
      int row = members[i] / columns;
      bound(column, row);
      for (int y = Math.max(0, row - 1); y <= Math.min(rows - 1, row + 1); y++) {
        for (int x = Math.max(0, column - 1); x <= Math.min(columns - 1, column + 1); x++) {
          take(y * columns + x);
        }
      }
    }
  }

  private void take(int cell) {
    if (!open.get(cell)) {
      return;
    }
    open.clear(cell);
    if (count == members.length) {
      members = Arrays.copyOf(members, 2 * members.length);
    }
    members[count++] = cell;
  }

  private void bound(int column, int row) {
    left = Math.min(left, column);
    right = Math.max(right, column + 1);
    top = Math.min(top, row);
    bottom = Math.max(bottom, row + 1);
  }

  private Piece piece() {
    int width = right - left;
    BitSet cells = new BitSet(width * (bottom - top));
    for (int i = 0; i < count; i++) {
      cells.set((members[i] / columns - top) * width + members[i] % columns - left);
    }
    return new Piece(left, top, width, bottom - top, cells);
  }
}
