package io.github.readfall.panels;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * Parts panels that a balloon across their gutter connects: where enough of a piece's columns have
 * a gap between two thick parts, and the gap's edges are straight, a gutter goes through it.
 */
final class Neck {

  // House defaults, found on generated strips.
  /** The least share of a piece's width that shows the gutter. */
  private static final double SEEN = 0.2;

  /** The least share of the gutter that has straight edges, where it is seen at one end only. */
  private static final double STRAIGHT = 0.75;

  /** The same where it is seen at both ends, and a balloon lies between. */
  private static final double STRAIGHT_AT_BOTH = 0.55;

  /** It is seen at both ends where it reaches over so much of the piece's width. */
  private static final double BOTH = 0.8;

  /** Gutters are no taller than this, in strip widths. */
  private static final double TALLEST = 0.5;

  /** What lies on either side of a gutter is at least this thick, in strip widths. */
  private static final double THICK = 0.03;

  private final Piece piece;
  private final int tallest;
  private final int thick;
  private final int[] gapTops;
  private final int[] gapBottoms;
  private final int[] seen;

  private Neck(Piece piece, int stripColumns) {
    this.piece = piece;
    this.tallest = (int) (TALLEST * stripColumns);
    this.thick = Math.max(1, (int) (THICK * stripColumns));
    this.gapTops = new int[piece.width()];
    this.gapBottoms = new int[piece.width()];
    this.seen = new int[piece.height() + 1];
  }

  /**
   * The two parts of a piece above and below a gutter through it; empty where there is none.
   *
   * @param stripColumns width of the strip, in cells
   */
  static Optional<List<Piece>> across(Piece piece, int stripColumns) {
    Neck neck = new Neck(piece, stripColumns);
    for (int column = 0; column < piece.width(); column++) {
      neck.count(column);
    }
    return neck.cut();
  }

  /** Counts, row by row, the columns that have a gap there. */
  private void count(int column) {
    int row = 0;
    while (row >= 0 && row < piece.height()) {
      int top = endOfPart(column, row);
      int bottom = endOfGap(column, top);
      if (bottom < piece.height() && isGap(column, top, bottom)) {
        seen[top]++;
        seen[bottom]--;
      }
      row = bottom;
    }
  }

  private int endOfPart(int column, int from) {
    int row = from;
    while (row < piece.height() && piece.has(column, row)) {
      row++;
    }
    return row;
  }

  private int endOfGap(int column, int from) {
    int row = from;
    while (row < piece.height() && !piece.has(column, row)) {
      row++;
    }
    return row;
  }

  private boolean isGap(int column, int top, int bottom) {
    return bottom > top
        && bottom - top <= tallest
        && isThick(column, top - thick, top)
        && isThick(column, bottom, bottom + thick);
  }

  private boolean isThick(int column, int from, int end) {
    if (from < 0 || end > piece.height()) {
      return false;
    }
    for (int row = from; row < end; row++) {
      if (!piece.has(column, row)) {
        return false;
      }
    }
    return true;
  }

  private Optional<List<Piece>> cut() {
    int best = 0;
    int now = 0;
    int row = 0;
    for (int i = 0; i < piece.height(); i++) {
      now += seen[i];
      if (now > best) {
        best = now;
        row = i;
      }
    }
    return best >= SEEN * piece.width() ? cutAt(row) : Optional.empty();
  }

  private Optional<List<Piece>> cutAt(int row) {
    Arrays.fill(gapTops, EdgeFit.NOWHERE);
    Arrays.fill(gapBottoms, EdgeFit.NOWHERE);
    int columns = 0;
    int first = piece.width();
    int last = 0;
    for (int column = 0; column < piece.width(); column++) {
      if (!piece.has(column, row) && note(column, row)) {
        columns++;
        first = Math.min(first, column);
        last = column;
      }
    }
    Edge above = EdgeFit.of(gapTops, 1);
    Edge below = EdgeFit.of(gapBottoms, 1);
    double met = (double) columns / piece.width();
    double least = last - first >= BOTH * piece.width() ? STRAIGHT_AT_BOTH : STRAIGHT;
    boolean straight = Math.min(above.share(), below.share()) >= least * met;
    return straight ? Optional.of(parts(above, below)) : Optional.empty();
  }

  /** Notes where the gap of a column begins and ends; whether it is one. */
  private boolean note(int column, int row) {
    int top = row;
    while (top > 0 && !piece.has(column, top - 1)) {
      top--;
    }
    int bottom = endOfGap(column, row);
    boolean gap = top > 0 && bottom < piece.height() && isGap(column, top, bottom);
    if (gap) {
      gapTops[column] = top;
      gapBottoms[column] = bottom;
    }
    return gap;
  }

  private List<Piece> parts(Edge above, Edge below) {
    BitSet upper = new BitSet();
    BitSet lower = new BitSet();
    BitSet cells = piece.cells();
    for (int i = cells.nextSetBit(0); i >= 0; i = cells.nextSetBit(i + 1)) {
      int column = i % piece.width();
      double middle = (above.at(column) + below.at(column)) / 2;
      int row = i / piece.width();
      (row < middle ? upper : lower).set(i);
    }
    return List.of(piece.part(upper), piece.part(lower));
  }
}
