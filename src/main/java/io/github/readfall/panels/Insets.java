package io.github.readfall.panels;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds panels within panels by the ring of paper round each. */
final class Insets {

  // House defaults, found on generated strips.
  private static final double LEAST_WIDTH = 0.08; // of the strip's
  private static final double LEAST_HEIGHT = 0.05;
  private static final double MOST_WIDTH = 0.9;

  /** Of the ring's box, the ring itself is less than this. */
  private static final double MOST_FILLED = 0.6;

  /** The least share of each of the ring's sides that lies on one line. */
  private static final double STRAIGHT = 0.8;

  /** What is this light may be the ring of an inset, whatever the gutters' colour. */
  private static final int WHITE = 0xf4f4f4;

  private final CellGrid grid;
  private final Tolerance tolerance;
  private final BitSet background;
  /**
   * An inset and what is round it.
   *
   * @param paper the ring
   * @param inset what it encloses
   */
  record Ring(Piece paper, Piece inset) {}

  private Insets(CellGrid grid, Tolerance tolerance, BitSet background) {
    this.grid = grid;
    this.tolerance = tolerance;
    this.background = background;
  }

  /** The rings within a strip's pictures. */
  static List<Ring> of(CellGrid grid, Tolerance tolerance, BitSet background) {
    Insets insets = new Insets(grid, tolerance, background);
    List<Ring> rings = new ArrayList<>();
    int least = (int) (LEAST_HEIGHT * grid.columns());
    PieceSearch.of(grid, insets.noPaper(), least).stream()
        .filter(insets::isRing)
        .forEach(ring -> insets.inside(ring).ifPresent(rings::add));
    return rings;
  }

  /** All cells but those within pictures that look like paper. */
  private BitSet noPaper() {
    List<Integer> papers = papers();
    int cells = grid.columns() * grid.rows();
    BitSet none = (BitSet) background.clone();
    for (int i = none.nextClearBit(0); i < cells; i = none.nextClearBit(i + 1)) {
      none.set(i, !isPaper(i, papers));
    }
    return none;
  }

  private List<Integer> papers() {
    List<Integer> papers = new ArrayList<>(List.of(WHITE));
    int stride = Math.max(1, background.cardinality() / 64);
    int passed = 0;
    for (int i = background.nextSetBit(0); i >= 0; i = background.nextSetBit(i + 1)) {
      int colour = grid.colour(i);
      if (passed++ % stride == 0 && !isNear(colour, papers)) {
        papers.add(colour);
      }
    }
    return papers;
  }

  private boolean isNear(int colour, List<Integer> papers) {
    for (int paper : papers) {
      if (Colours.distance(colour, paper) <= tolerance.colour()) {
        return true;
      }
    }
    return false;
  }

  private boolean isPaper(int cell, List<Integer> papers) {
    return grid.unevenness(cell) <= tolerance.unevenness() && isNear(grid.colour(cell), papers);
  }

  private Optional<Ring> inside(Piece ring) {
    return PieceSearch.around(ring, 2).stream()
        .max(Comparator.comparingInt(piece -> piece.width() * piece.height()))
        .filter(inset -> isInset(ring, inset))
        .map(inset -> new Ring(ring, inset));
  }

  private boolean isRing(Piece ring) {
    return ring.width() >= LEAST_WIDTH * grid.columns()
        && ring.width() <= MOST_WIDTH * grid.columns()
        && ring.height() >= LEAST_HEIGHT * grid.columns()
        && ring.cells().cardinality() <= MOST_FILLED * ring.width() * ring.height()
        && isStraight(ring)
        && isStraight(ring.turned());
  }

  /** Whether the upper and the lower side are, all along. */
  private static boolean isStraight(Piece ring) {
    int above = 0;
    int below = 0;
    for (int column = 0; column < ring.width(); column++) {
      above += ring.has(column, 0) || ring.has(column, 1) ? 1 : 0;
      below +=
          ring.has(column, ring.height() - 1) || ring.has(column, ring.height() - 2) ? 1 : 0;
    }
    return Math.min(above, below) >= STRAIGHT * ring.width();
  }

  private boolean isInset(Piece ring, Piece inset) {
    return inset.left() > ring.left()
        && inset.top() > ring.top()
        && inset.right() < ring.right()
        && inset.bottom() < ring.bottom()
        && inset.width() >= LEAST_WIDTH * grid.columns()
        && inset.height() >= LEAST_HEIGHT * grid.columns()
        && 2 * (long) inset.width() * inset.height() > (long) ring.width() * ring.height();
  }
}
