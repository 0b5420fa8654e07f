package io.github.readfall.art.panels;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Separates panels that a balloon across their gutter connects: if enough of a piece's columns have
 * a gap between two thick parts, and the gap's edges are straight, a gutter goes through it.
 */
final class Neck {

  // House defaults, found on generated strips.
  /** The least share of a piece's width that shows the gutter. */
  private static final double SEEN = 0.2;

  /** The same if it is seen at one end only: it may be a white object in a picture. */
  private static final double SEEN_AT_ONE_END = 0.33;

  private static final double SEEN_AT_BOTH_ENDS = 0.25;

  /** Greatest slope of a gutter. */
  private static final double STEEPEST = 0.18;

  /** The least share of the gutter that has straight edges. */
  private static final double STRAIGHT = 0.5;

  private static final double STRAIGHT_AT_ONE_END = 0.88;

  /** Least width of an end, in shares of the piece's width. */
  private static final double END = 0.04;

  /** Least width of what crosses the gutter, in shares of the piece's width. */
  private static final double THING = 0.1;

  private static final double SAME_LINE = 1.5; // cells

  /** Number of the likeliest places for a gutter that are examined. */
  private static final int TRIES = 6;

  /** Greatest height of a gutter, in strip widths. */
  private static final double TALLEST = 0.5;

  /** Least thickness on either side of a gutter, in strip widths. */
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
   * The middle of a gutter that goes across a piece; empty if there is none.
   *
   * @param stripColumns width of the strip, in cells
   */
  static Optional<Edge> across(Piece piece, int stripColumns) {
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

  private Optional<Edge> cut() {
    int[] columns = new int[piece.height()];
    int now = 0;
    for (int row = 0; row < columns.length; row++) {
      now += seen[row];
      columns[row] = now;
    }
    for (int i = 0; i < TRIES; i++) {
      int row = greatest(columns);
      if (columns[row] < SEEN * piece.width()) {
        return Optional.empty();
      }
      Optional<Edge> gutter = cutAt(row);
      if (gutter.isPresent()) {
        return gutter;
      }
      Arrays.fill(columns, Math.max(0, row - thick), Math.min(columns.length, row + thick), 0);
    }
    return Optional.empty();
  }

  private static int greatest(int[] values) {
    int at = 0;
    for (int i = 1; i < values.length; i++) {
      at = values[i] > values[at] ? i : at;
    }
    return at;
  }

  private Optional<Edge> cutAt(int row) {
    Arrays.fill(gapTops, EdgeFit.NOWHERE);
    Arrays.fill(gapBottoms, EdgeFit.NOWHERE);
    int columns = 0;
    for (int column = 0; column < piece.width(); column++) {
      columns += !piece.has(column, row) && note(column, row) ? 1 : 0;
    }
    Edge above = EdgeFit.of(gapTops, 1);
    Edge below = EdgeFit.of(gapBottoms, 1);
    int[] straight =
        IntStream.range(0, piece.width())
            .filter(column -> isOn(above, gapTops, column) && isOn(below, gapBottoms, column))
            .toArray();
    boolean both = isAtBothEnds(straight);
    double least = both ? SEEN_AT_BOTH_ENDS : SEEN_AT_ONE_END;
    boolean enough =
        columns >= least * piece.width()
            && straight.length >= (both ? STRAIGHT : STRAIGHT_AT_ONE_END) * columns
            && Math.max(Math.abs(above.slope()), Math.abs(below.slope())) <= STEEPEST;
    return enough ? Optional.of(above.halfWayTo(below)) : Optional.empty();
  }

  private static boolean isOn(Edge line, int[] places, int column) {
    return places[column] != EdgeFit.NOWHERE
        && Math.abs(places[column] - line.at(column)) <= SAME_LINE;
  }

  /** Returns true if the gutter is seen on both sides of the widest object across it. */
  private boolean isAtBothEnds(int[] straight) {
    int after = 0;
    for (int i = 1; i < straight.length; i++) {
      if (after == 0 || straight[i] - straight[i - 1] > straight[after] - straight[after - 1]) {
        after = i;
      }
    }
    int least = (int) Math.ceil(END * piece.width());
    return after > 0
        && straight[after] - straight[after - 1] >= THING * piece.width()
        && Math.min(after, straight.length - after) >= least;
  }

  /** Notes the beginning and end of a column's gap; returns true if it is one. */
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
}
