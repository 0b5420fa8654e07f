package io.github.readfall.art.panels;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.Stream;

/** Finds panels within panels by the ring of paper round each. */
final class Insets {

  // House defaults, found on generated strips.
  private static final double LEAST_WIDTH = 0.08; // of the strip's
  private static final double LEAST_HEIGHT = 0.05;

  /** Share of its box that an inset fills. */
  private static final double FILLED = 0.92;

  /** Lightness from which a colour may be the ring of an inset, whatever the gutters' colour. */
  private static final int WHITE = 0xf4f4f4;

  private final CellGrid grid;
  private final Tolerance tolerance;
  private final BitSet background;

  /**
   * An inset and the paper round it.
   *
   * @param paper round it, and everything joined to that
   * @param inset enclosed by it
   */
  record Ring(Piece paper, Piece inset) {}

  private Insets(CellGrid grid, Tolerance tolerance, BitSet background) {
    this.grid = grid;
    this.tolerance = tolerance;
    this.background = background;
  }

  /** The rings inside a strip's pictures. */
  static List<Ring> of(CellGrid grid, Tolerance tolerance, BitSet background) {
    Insets insets = new Insets(grid, tolerance, background);
    List<Ring> rings = new ArrayList<>();
    int least = (int) (LEAST_HEIGHT * grid.columns());
    PieceSearch.of(grid, insets.noPaper(), least)
        .forEach(paper -> insets.inside(paper, least).forEach(rings::add));
    return rings;
  }

  /** All cells except those inside pictures that look like paper. */
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

  private Stream<Ring> inside(Piece paper, int least) {
    return PieceSearch.around(paper, least).stream()
        .filter(inset -> isInset(paper, inset))
        .map(inset -> new Ring(paper, inset));
  }

  private boolean isInset(Piece paper, Piece inset) {
    return inset.left() > paper.left()
        && inset.top() > paper.top()
        && inset.right() < paper.right()
        && inset.bottom() < paper.bottom()
        && inset.width() >= LEAST_WIDTH * grid.columns()
        && inset.height() >= LEAST_HEIGHT * grid.columns()
        && inset.cells().cardinality() >= FILLED * inset.width() * inset.height();
  }
}
