package io.github.readfall.art.panels;

import java.util.ArrayList;
import java.util.List;

/** Finds the bands of a strip by the profile of its rows. */
final class BandFinder {

  /** Least height of a band, in cells. House default: less than any gutter. */
  private static final int LEAST_ROWS = 2;

  /** Distance from a band's edge within which something else must begin, in cells. */
  private static final int NEAR = 2;

  /** Bands at most this far apart, in cells, are adjacent: only a line is between them. */
  private static final int LINE = 2;

  private final CellGrid grid;
  private final Tolerance tolerance;

  private BandFinder(CellGrid grid, Tolerance tolerance) {
    this.grid = grid;
    this.tolerance = tolerance;
  }

  /** The bands from the top. */
  static List<Band> of(CellGrid grid, Tolerance tolerance) {
    return new BandFinder(grid, tolerance).all();
  }

  private List<Band> all() {
    List<Band> bands = new ArrayList<>();
    int top = 0;
    while (top < grid.rows()) {
      int bottom = end(top);
      if (bottom - top >= LEAST_ROWS) {
        bands.add(band(top, bottom, run(bands, top)));
      }
      top = Math.max(bottom, top + 1);
    }
    return bands;
  }

  /** The end of the rows that are alike; the row itself if it is not even flat. */
  private int end(int top) {
    if (!isFlat(top)) {
      return top;
    }
    int bottom = top + 1;
    while (bottom < grid.rows() && isFlat(bottom) && isAlike(bottom - 1, bottom)) {
      bottom++;
    }
    return bottom;
  }

  private static int run(List<Band> above, int top) {
    if (above.isEmpty()) {
      return 0;
    }
    Band last = above.get(above.size() - 1);
    return top - last.bottom() <= LINE ? last.run() : last.run() + 1;
  }

  private boolean isFlat(int row) {
    int first = grid.index(0, row);
    for (int i = first; i < first + grid.columns(); i++) {
      if (grid.unevenness(i) > tolerance.unevenness()
          || (i > first
              && Colours.distance(grid.colour(i - 1), grid.colour(i)) > tolerance.colour())) {
        return false;
      }
    }
    return true;
  }

  private boolean isAlike(int row, int next) {
    int sum = 0;
    for (int column = 0; column < grid.columns(); column++) {
      sum += distance(column, row, next);
    }
    return sum <= tolerance.colour() / 2 * grid.columns();
  }

  private int distance(int column, int row, int other) {
    return Colours.distance(
        grid.colour(grid.index(column, row)), grid.colour(grid.index(column, other)));
  }

  private Band band(int top, int bottom, int run) {
    int colour = grid.colour(grid.index(grid.columns() / 2, (top + bottom) / 2));
    return new Band(top, bottom, colour, straight(top, -1), straight(bottom - 1, 1), run);
  }

  /** The share of a band's edge at which something else begins. */
  private double straight(int edge, int way) {
    int last = edge + NEAR * way;
    if (last < 0 || last >= grid.rows()) {
      return 1;
    }
    int met = 0;
    for (int column = 0; column < grid.columns(); column++) {
      boolean other = false;
      for (int row = edge + way; row != last + way; row += way) {
        other |=
            grid.unevenness(grid.index(column, row)) > tolerance.unevenness()
                || distance(column, edge, row) > tolerance.colour();
      }
      met += other ? 1 : 0;
    }
    return (double) met / grid.columns();
  }
}
