package io.github.readfall.art.panels;

import java.util.Arrays;
import java.util.Optional;

/**
 * Finds the lower edge of a panel from which something hangs down: most of its width ends on one
 * straight line, with paper below.
 */
final class Ledge {

  // House defaults, found on generated strips.
  /** The least share of the width above that ends there. */
  private static final double ENDS = 0.4;

  /** The least width that ends there, in strip widths. */
  private static final double LEAST = 0.08;

  /** Thickness of the panel above, and of what hangs down, in strip widths. */
  private static final double THICK = 0.03;

  private static final double HANGS_ON = 0.06;

  /** Paper below it, in cells. */
  private static final int PAPER = 3;

  private static final double STRAIGHT = 0.8;
  private static final int TRIES = 4;

  private final Piece piece;
  private final int stripColumns;
  private final int thick;

  private Ledge(Piece piece, int stripColumns) {
    this.piece = piece;
    this.stripColumns = stripColumns;
    this.thick = Math.max(1, (int) (THICK * stripColumns));
  }

  /**
   * The line on which the upper part of a piece ends; empty if there is none.
   *
   * @param stripColumns width of the strip, in cells
   */
  static Optional<Edge> across(Piece piece, int stripColumns) {
    return new Ledge(piece, stripColumns).line();
  }

  private Optional<Edge> line() {
    int last = piece.height() - (int) (HANGS_ON * stripColumns);
    int[] ends = new int[piece.height()];
    for (int column = 0; column < piece.width(); column++) {
      for (int row = thick; row < last; row++) {
        ends[row] += isEnd(column, row) ? 1 : 0;
      }
    }
    for (int i = 0; i < TRIES; i++) {
      int row = likeliest(ends);
      Optional<Edge> line = near(row);
      if (line.isPresent()) {
        return line;
      }
      Arrays.fill(ends, Math.max(0, row - thick), Math.min(ends.length, row + thick), 0);
    }
    return Optional.empty();
  }

  /** Returns true if a column of the panel ends above a row. */
  private boolean isEnd(int column, int row) {
    if (piece.has(column, row) || !piece.has(column, row - 1)) {
      return false;
    }
    for (int i = 2; i <= thick; i++) {
      if (!piece.has(column, row - i)) {
        return false;
      }
    }
    for (int i = 1; i < PAPER && row + i < piece.height(); i++) {
      if (piece.has(column, row + i)) {
        return false;
      }
    }
    return true;
  }

  private static int likeliest(int[] ends) {
    int best = 1;
    int most = 0;
    for (int i = 1; i < ends.length - 1; i++) {
      int here = ends[i - 1] + ends[i] + ends[i + 1];
      if (here > most) {
        most = here;
        best = i;
      }
    }
    return best;
  }

  private Optional<Edge> near(int row) {
    int[] places = new int[piece.width()];
    Arrays.fill(places, EdgeFit.NOWHERE);
    int found = 0;
    for (int column = 0; column < piece.width(); column++) {
      for (int i = Math.max(thick, row - thick); i < Math.min(piece.height(), row + thick); i++) {
        if (isEnd(column, i)) {
          places[column] = i;
        }
      }
      found += places[column] == EdgeFit.NOWHERE ? 0 : 1;
    }
    int above = piece.count(Math.max(0, row - 1 - thick));
    if (found < ENDS * above || found < LEAST * stripColumns) {
      return Optional.empty();
    }
    Edge line = EdgeFit.of(places, 1);
    boolean straight = line.share() * piece.width() >= STRAIGHT * found;
    return straight ? Optional.of(line) : Optional.empty();
  }
}
