package io.github.readfall.panels;

import io.github.readfall.geom.Box;
import java.util.ArrayList;
import java.util.List;

/**
 * What a panel looks like, as opposed to a balloon, lettering or dirt between panels. House
 * defaults, found on generated strips.
 *
 * @param stripColumns width of the strip, in cells
 */
record PanelShape(int stripColumns) {

  private static final double LEAST_WIDTH = 0.1; // of the strip's
  private static final double LEAST_HEIGHT = 0.06;
  private static final double HELD = 0.9;

  /** A panel this large may have any shape, in squares of the strip's width. */
  private static final double LARGE = 0.2;

  /** Of a smaller one so many sides are straight, and one more of the smallest. */
  private static final int STRAIGHT_SIDES = 2;

  private static final double SMALL = 0.1;

  /** Lower things are no panels, in cells. */
  int leastHeight() {
    return (int) (LEAST_HEIGHT * stripColumns);
  }

  /** The pieces that lie in no other's box. */
  List<Piece> outermost(List<Piece> pieces) {
    List<Piece> outermost = new ArrayList<>();
    for (Piece piece : pieces) {
      boolean held =
          pieces.stream().anyMatch(other -> !other.equals(piece) && other.holds(piece, HELD));
      if (!held) {
        outermost.add(piece);
      }
    }
    return outermost;
  }

  boolean isPanel(Box box, Frame frame, CellGrid grid) {
    double strip = grid.widthPx();
    double area = box.width() * box.height() / (strip * strip);
    int needed = area >= LARGE ? 0 : STRAIGHT_SIDES;
    if (area < SMALL) {
      needed += frame.parted() ? 2 : 1; // half a balloon has three
    }
    return box.width() >= LEAST_WIDTH * strip
        && box.height() >= LEAST_HEIGHT * strip
        && 4 - frame.guessed() >= needed;
  }
}
