package io.github.readfall.art.panels;

import io.github.readfall.base.geom.Box;
import java.util.ArrayList;
import java.util.List;

/**
 * Tells panels from balloons, lettering and dirt between panels by their shape. House defaults,
 * found on generated strips.
 *
 * @param stripColumns width of the strip, in cells
 */
record PanelShape(int stripColumns) {

  private static final double LEAST_WIDTH = 0.1; // of the strip's
  private static final double LEAST_HEIGHT = 0.06;
  private static final double HELD = 0.9;

  /** A panel this large may have any shape, in squares of the strip's width. */
  private static final double LARGE = 0.2;

  /** Straight sides that a smaller one has; the smallest has one more. */
  private static final int STRAIGHT_SIDES = 2;

  private static final double SMALL = 0.1;

  /** Distance inside an edge from which its line is no longer seen, in cells. */
  private static final int INSIDE = 3;

  private static final double PLAIN = 0.97;

  /** Least height of a panel, in cells. */
  int leastHeight() {
    return (int) (LEAST_HEIGHT * stripColumns);
  }

  /** The pieces outside every other's box. */
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

  /** Returns true if a frame is round a panel rather than round words. */
  boolean isPanel(PanelSides frame, CellGrid grid, Tolerance tolerance) {
    Box box = frame.box();
    double strip = grid.widthPx();
    double area = box.width() * box.height() / (strip * strip);
    int needed = area >= LARGE ? 0 : STRAIGHT_SIDES;
    if (area < SMALL) {
      needed += frame.parted() ? 2 : 1; // half a balloon has three
    }
    return box.width() >= LEAST_WIDTH * strip
        && box.height() >= LEAST_HEIGHT * strip
        && 4 - frame.guessed() >= needed
        && !(area < SMALL && isPlain(box, grid, tolerance));
  }

  /** Returns true if one flat colour is all along its inside, as round the words of a box. */
  private static boolean isPlain(Box box, CellGrid grid, Tolerance tolerance) {
    int left = cell(box.x(), grid) + INSIDE;
    int top = cell(box.y(), grid) + INSIDE;
    int right = Math.min(grid.columns(), cell(box.right(), grid)) - 1 - INSIDE;
    int bottom = Math.min(grid.rows(), cell(box.bottom(), grid)) - 1 - INSIDE;
    int colour = grid.colour(grid.index(left, top));
    int all = 0;
    int plain = 0;
    for (int row = top; row <= bottom; row++) {
      int step = row == top || row == bottom ? 1 : Math.max(1, right - left);
      for (int column = left; column <= right; column += step) {
        int cell = grid.index(column, row);
        boolean same = Colours.distance(grid.colour(cell), colour) <= tolerance.colour();
        all++;
        plain += same && grid.unevenness(cell) <= tolerance.unevenness() ? 1 : 0;
      }
    }
    return plain >= PLAIN * all;
  }

  private static int cell(double px, CellGrid grid) {
    return Math.max(0, (int) (px / grid.cellPx()));
  }
}
