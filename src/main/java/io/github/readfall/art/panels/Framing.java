package io.github.readfall.art.panels;

import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds the four sides of a piece, as exactly as cells show. */
final class Framing {

  private final CellGrid grid;
  private final Piece piece;
  private final Piece turned;

  private Framing(CellGrid grid, Piece piece) {
    this.grid = grid;
    this.piece = piece;
    this.turned = piece.turned();
  }

  static PanelSides of(CellGrid grid, Piece piece, boolean parted) {
    return new Framing(grid, piece).frame(parted);
  }

  private PanelSides frame(boolean parted) {
    Flank fromTop = Flank.of(met(piece.width(), piece::first));
    Flank fromBottom = Flank.of(met(piece.width(), column -> fromEnd(piece, column)));
    Flank fromLeft = Flank.of(met(piece.height(), turned::first));
    Flank fromRight = Flank.of(met(piece.height(), row -> fromEnd(turned, row)));
    Edge top = fromTop.edge(first(fromLeft, fromRight));
    Edge bottom = flipped(fromBottom.edge(last(fromLeft, fromRight)), piece.height());
    Edge left = fromLeft.edge(first(fromTop, fromBottom));
    Edge right = flipped(fromRight.edge(last(fromTop, fromBottom)), piece.width());
    return new PanelSides(
        border(Side.TOP, top, left, right),
        border(Side.BOTTOM, bottom, left, right),
        border(Side.LEFT, left, top, bottom),
        border(Side.RIGHT, right, top, bottom),
        parted);
  }

  private static int first(Flank one, Flank other) {
    return Stream.of(one, other).filter(Flank::isSure).mapToInt(Flank::firstOnLine).min().orElse(0);
  }

  private static int last(Flank one, Flank other) {
    return Stream.of(one, other).filter(Flank::isSure).mapToInt(Flank::lastOnLine).min().orElse(0);
  }

  private static int[] met(int length, IntUnaryOperator met) {
    return IntStream.range(0, length).map(met).toArray();
  }

  private static int fromEnd(Piece piece, int column) {
    int last = piece.last(column);
    return last == EdgeFit.NOWHERE ? EdgeFit.NOWHERE : piece.height() - 1 - last;
  }

  private static Edge flipped(Edge edge, int size) {
    return new Edge(size - edge.at(), -edge.slope(), edge.share());
  }

  /** A side between the two that it joins, on the strip. */
  private BorderLine border(Side side, Edge edge, Edge first, Edge last) {
    int alongCells = side.isLevel() ? piece.left() : piece.top();
    int acrossCells = side.isLevel() ? piece.top() : piece.left();
    int acrossLength = side.isLevel() ? piece.height() : piece.width();
    double from = Math.max(0, Math.min(first.at(), first.at(acrossLength)));
    double end = Math.max(last.at(), last.at(acrossLength));
    int most = side.isLevel() ? grid.widthPx() : grid.heightPx();
    int fromPx = (int) Math.rint((alongCells + from) * grid.cellPx());
    int endPx = Math.min(most, (int) Math.rint((alongCells + end) * grid.cellPx()));
    Edge line = new Edge((acrossCells + edge.at(from)) * grid.cellPx(), edge.slope(), edge.share());
    return new BorderLine(side, fromPx, Math.max(fromPx + 1, endPx), line);
  }
}
