package io.github.readfall.art.panels;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/** Cuts a piece in two along a gutter that goes through it, across or down. */
final class Parting {

  private Parting() {}

  /** A piece as seen from one of its sides. */
  private record View(Piece piece, boolean turned, boolean flipped) {

    Piece seen() {
      Piece first = turned ? piece.turned() : piece;
      return flipped ? first.flipped() : first;
    }

    /** The parts of the piece before and after a line that is drawn in this view. */
    List<Piece> cut(Edge line) {
      BitSet before = new BitSet();
      BitSet behind = new BitSet();
      BitSet cells = piece.cells();
      for (int i = cells.nextSetBit(0); i >= 0; i = cells.nextSetBit(i + 1)) {
        (isBefore(i % piece.width(), i / piece.width(), line) ? before : behind).set(i);
      }
      return before.isEmpty() || behind.isEmpty()
          ? List.of()
          : List.of(piece.part(before), piece.part(behind));
    }

    private boolean isBefore(int column, int row, Edge line) {
      int along = turned ? row : column;
      int across = turned ? column : row;
      int height = turned ? piece.width() : piece.height();
      return (flipped ? height - 1 - across : across) < line.at(along);
    }
  }

  /**
   * The two parts of a piece; none if it is whole.
   *
   * @param stripColumns width of the strip, in cells
   */
  static List<Piece> of(Piece piece, int stripColumns) {
    List<View> views =
        List.of(
            new View(piece, false, false),
            new View(piece, true, false),
            new View(piece, false, true),
            new View(piece, true, true));
    for (View view : views) {
      Optional<Edge> gutter =
          view.flipped() ? Optional.empty() : Neck.across(view.seen(), stripColumns);
      if (gutter.isPresent()) {
        return view.cut(gutter.get());
      }
    }
    for (View view : views) {
      Optional<Edge> ledge = Ledge.across(view.seen(), stripColumns);
      if (ledge.isPresent()) {
        return view.cut(ledge.get());
      }
    }
    return List.of();
  }
}
