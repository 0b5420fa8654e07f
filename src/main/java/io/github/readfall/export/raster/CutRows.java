package io.github.readfall.export.raster;

import io.github.readfall.plan.Obstacle;
import java.util.List;
import java.util.OptionalInt;

/** Counts what a cut between two rows of a scaled strip would cross. */
final class CutRows {

  private static final int BITS = 20;

  /** Lines of text above balloons above panels, in one number for each row; not changed. */
  private final long[] through;

  private CutRows(long[] through) {
    this.through = through;
  }

  /**
   * Looks at every row.
   *
   * @param obstacles in strip pixels
   * @param scale of a row to a strip pixel
   * @param heightPx of the scaled strip
   */
  static CutRows of(List<Obstacle> obstacles, double scale, int heightPx) {
    long[] through = new long[heightPx + 2];
    for (Obstacle obstacle : obstacles) {
      int first = (int) Math.floor(obstacle.topPx() * scale) + 1;
      int last = (int) Math.ceil(obstacle.bottomPx() * scale) - 1;
      if (first <= last && last >= 0 && first <= heightPx) {
        through[Math.max(0, first)] += weight(obstacle.kind());
        through[Math.min(heightPx, last) + 1] -= weight(obstacle.kind());
      }
    }
    for (int row = 1; row < through.length; row++) {
      through[row] += through[row - 1];
    }
    return new CutRows(through);
  }

  private static long weight(Obstacle.Kind kind) {
    return switch (kind) {
      case PANEL -> 1L;
      case BALLOON -> 1L << BITS;
      case LETTERS -> 1L << (2 * BITS);
    };
  }

  boolean isThroughBalloon(int row) {
    return through[row] >= weight(Obstacle.Kind.BALLOON);
  }

  boolean isThroughLetters(int row) {
    return through[row] >= weight(Obstacle.Kind.LETTERS);
  }

  /** The one of the two rows at a height that crosses less, else the nearer one. */
  int nearest(double height) {
    int most = through.length - 2;
    int above = Math.max(0, Math.min(most, (int) Math.floor(height)));
    int below = Math.max(0, Math.min(most, (int) Math.ceil(height)));
    if (through[above] != through[below]) {
      return through[above] < through[below] ? above : below;
    }
    return height - above <= below - height ? above : below;
  }

  /**
   * The row that divides a slice best: through no balloon, through as few panels as can be in its
   * middle half, then near its middle.
   *
   * @param top of the slice
   * @param bottom of the slice
   * @param leastPx that each half must have
   */
  OptionalInt dividing(int top, int bottom, int leastPx) {
    int quarter = Math.max(leastPx, (bottom - top) / 4);
    OptionalInt even = best(top + quarter, bottom - quarter, (top + bottom) / 2);
    return even.isPresent() ? even : best(top + leastPx, bottom - leastPx, (top + bottom) / 2);
  }

  private OptionalInt best(int from, int to, int middle) {
    OptionalInt best = OptionalInt.empty();
    for (int row = from; row <= to; row++) {
      if (!isThroughBalloon(row) && (best.isEmpty() || isBetter(row, best.getAsInt(), middle))) {
        best = OptionalInt.of(row);
      }
    }
    return best;
  }

  private boolean isBetter(int row, int other, int middle) {
    return through[row] != through[other]
        ? through[row] < through[other]
        : Math.abs(row - middle) < Math.abs(other - middle);
  }
}
