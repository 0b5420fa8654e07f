package io.github.readfall.panels;

import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;

/** Finds the four sides of a piece, as exactly as cells tell. */
final class Framing {

  /** Hand-drawn lines wobble by as many cells. */
  private static final double SAME_LINE_CELLS = 1;

  private final CellGrid grid;
  private final Piece piece;
  private final Piece turned;

  private Framing(CellGrid grid, Piece piece) {
    this.grid = grid;
    this.piece = piece;
    this.turned = piece.turned();
  }

  static Frame of(CellGrid grid, Piece piece, boolean parted) {
    return new Framing(grid, piece).frame(parted);
  }

  private Frame frame(boolean parted) {
    Edge top = fit(piece.width(), piece::first);
    Edge bottom = flipped(fit(piece.width(), column -> fromEnd(piece, column)), piece.height());
    Edge left = fit(piece.height(), turned::first);
    Edge right = flipped(fit(piece.height(), row -> fromEnd(turned, row)), piece.width());
    return new Frame(
        border(Side.TOP, top, left, right),
        border(Side.BOTTOM, bottom, left, right),
        border(Side.LEFT, left, top, bottom),
        border(Side.RIGHT, right, top, bottom),
        parted);
  }

  private static int fromEnd(Piece piece, int column) {
    int last = piece.last(column);
    return last == EdgeFit.NOWHERE ? EdgeFit.NOWHERE : piece.height() - 1 - last;
  }

  /** A side that is not straight lies where its outermost cell is. */
  private static Edge fit(int length, IntUnaryOperator met) {
    Edge edge = EdgeFit.of(IntStream.range(0, length).map(met).toArray(), SAME_LINE_CELLS);
    return edge.share() < Frame.GUESSED ? new Edge(0, 0, edge.share()) : edge;
  }

  private static Edge flipped(Edge edge, int size) {
    return new Edge(size - edge.at(), -edge.slope(), edge.share());
  }

  /** A side between the two it meets, on the strip. */
  private Border border(Side side, Edge edge, Edge first, Edge last) {
    int alongCells = side.isLevel() ? piece.left() : piece.top();
    int acrossCells = side.isLevel() ? piece.top() : piece.left();
    int acrossLength = side.isLevel() ? piece.height() : piece.width();
    double from = Math.max(0, Math.min(first.at(), first.at(acrossLength)));
    double end = Math.max(last.at(), last.at(acrossLength));
    int most = side.isLevel() ? grid.widthPx() : grid.heightPx();
    int fromPx = (int) Math.rint((alongCells + from) * grid.cellPx());
    int endPx = Math.min(most, (int) Math.rint((alongCells + end) * grid.cellPx()));
    Edge line = new Edge((acrossCells + edge.at(from)) * grid.cellPx(), edge.slope(), edge.share());
    return new Border(side, fromPx, Math.max(fromPx + 1, endPx), line);
  }
}
