package io.github.readfall.art.panels;

import io.github.readfall.base.OneCall;
import java.util.Arrays;
import java.util.BitSet;

/**
 * Spreads from some cells of a grid to those beside them, as long as the colour changes slowly and
 * no cell is uneven.
 */
@OneCall
final class FloodSearch {

  private static final int FIRST_ROOM = 1024;

  private final CellGrid grid;
  private final Tolerance tolerance;
  private final BitSet flooded = new BitSet();
  private long[] queue = new long[FIRST_ROOM]; // a ring: cell above, colour below
  private int head;
  private int waiting;

  FloodSearch(CellGrid grid, Tolerance tolerance) {
    this.grid = grid;
    this.tolerance = tolerance;
  }

  /** The cells reached so far. */
  BitSet flooded() {
    return flooded;
  }

  /** Starts at a cell, if it is even and not reached yet. */
  void seed(int cell) {
    if (!flooded.get(cell) && grid.unevenness(cell) <= tolerance.unevenness()) {
      add(cell, grid.colour(cell));
    }
  }

  /** Spreads from every start. */
  void spread() {
    while (waiting > 0) {
      long next = queue[head];
      head = (head + 1) % queue.length;
      waiting--;
      reach((int) (next >>> 32), (int) next);
    }
  }

  private void reach(int cell, int colour) {
    int column = cell % grid.columns();
    if (column > 0) {
      take(cell - 1, colour);
    }
    if (column < grid.columns() - 1) {
      take(cell + 1, colour);
    }
    if (cell >= grid.columns()) {
      take(cell - grid.columns(), colour);
    }
    if (cell < grid.columns() * (grid.rows() - 1)) {
      take(cell + grid.columns(), colour);
    }
  }

  /** Takes a cell. The expected colour moves half way to each cell, so it follows a gradient. */
  private void take(int cell, int colour) {
    if (!flooded.get(cell)
        && grid.unevenness(cell) <= tolerance.unevenness()
        && Colours.distance(grid.colour(cell), colour) <= tolerance.colour()) {
      add(cell, Colours.between(colour, grid.colour(cell)));
    }
  }

  private void add(int cell, int colour) {
    flooded.set(cell);
    if (waiting == queue.length) {
      long[] more = Arrays.copyOf(queue, 2 * queue.length);
      System.arraycopy(queue, 0, more, queue.length, head);
      queue = more;
    }
    queue[(head + waiting) % queue.length] = (long) cell << 32 | colour;
    waiting++;
  }
}
