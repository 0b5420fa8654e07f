package io.github.readfall.art.panels;

import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The paper round the panels of a strip: the gutters and everything joined to them. */
final class Background {

  /**
   * Greatest height of a piece of gutter between a balloon and the strip's side, in strip widths.
   * House default, no source.
   */
  private static final double TALLEST_PIECE = 0.35;

  private final CellGrid grid;
  private final Tolerance tolerance;
  private final FloodSearch flood;

  private Background(CellGrid grid, Tolerance tolerance) {
    this.grid = grid;
    this.tolerance = tolerance;
    this.flood = new FloodSearch(grid, tolerance);
  }

  /** The cells that are background. */
  static BitSet of(CellGrid grid, Tolerance tolerance) {
    return new Background(grid, tolerance).cells();
  }

  private BitSet cells() {
    List<Band> gutters = GutterFinder.among(BandFinder.of(grid, tolerance), tolerance);
    Set<Integer> colours = new HashSet<>();
    for (Band gutter : gutters) {
      colours.add(gutter.colour());
      for (int row = gutter.top(); row < gutter.bottom(); row++) {
        seedRow(row);
      }
    }
    if (colours.isEmpty()) {
      seedSides(colours);
    }
    flood.spread();
    for (int known = -1; known < colours.size(); ) {
      known = colours.size();
      seedPieces(0, colours);
      seedPieces(grid.columns() - 1, colours);
      flood.spread();
    }
    return flood.flooded();
  }

  private void seedRow(int row) {
    for (int column = 0; column < grid.columns(); column++) {
      flood.seed(grid.index(column, row));
    }
  }

  /** Starts at the corners of the strip, if no gutter goes across it. */
  private void seedSides(Set<Integer> colours) {
    int right = grid.columns() - 1;
    int bottom = grid.rows() - 1;
    for (int cell :
        List.of(
            grid.index(0, 0),
            grid.index(right, 0),
            grid.index(0, bottom),
            grid.index(right, bottom))) {
      if (grid.unevenness(cell) <= tolerance.unevenness()) {
        colours.add(grid.colour(cell));
        flood.seed(cell);
      }
    }
  }

  /** Starts at the pieces of gutter that a balloon leaves at one side of the strip. */
  private void seedPieces(int column, Set<Integer> colours) {
    int top = 0;
    while (top < grid.rows()) {
      int bottom = top;
      while (bottom < grid.rows() && isPaper(grid.index(column, bottom), colours)) {
        bottom++;
      }
      if (bottom > top && bottom - top <= TALLEST_PIECE * grid.columns()) {
        colours.add(grid.colour(grid.index(column, (top + bottom) / 2)));
        for (int row = top; row < bottom; row++) {
          flood.seed(grid.index(column, row));
        }
      }
      top = Math.max(bottom, top + 1);
    }
  }

  private boolean isPaper(int cell, Set<Integer> colours) {
    return grid.unevenness(cell) <= tolerance.unevenness()
        && colours.stream()
            .anyMatch(
                colour -> Colours.distance(grid.colour(cell), colour) <= 2 * tolerance.colour());
  }
}
