package io.github.readfall.type.balloon;

import io.github.readfall.base.OneCall;
import io.github.readfall.type.text.BreakCosts;
import io.github.readfall.type.text.LineTable;
import java.util.Arrays;

/**
 * Fills a trial outline with a text: each line at most as wide as the outline's chord at its place,
 * its breaks of least cost. The chords are near enough for a guess; whoever takes it measures the
 * outline that the lines need.
 */
@OneCall
final class ChordFill {

  private static final double DIAGONAL = Math.sqrt(0.5);
  private static final int HALVINGS = 10;

  /** The cost of air beside a line, so that lines of equal costs fill their chords evenly. */
  private static final double AIR = 0.02;

  private final LineTable table;
  private final Enclosure enclosure;
  private final FitRules rules;
  private final BreakCosts costs;
  private final int n;
  private final double capitalPx;
  private final double[] chords;
  private double[] before;
  private double[] after;
  private final int[][] from;
  private final int[] ends;

  ChordFill(LineTable table, Enclosure enclosure, FitRules rules) {
    this.table = table;
    this.enclosure = enclosure;
    this.rules = rules;
    this.costs = table.costs();
    this.n = table.size();
    this.capitalPx = -table.box(0, 0).top();
    this.chords = new double[n];
    this.before = new double[n + 1];
    this.after = new double[n + 1];
    this.from = new int[n][];
    this.ends = new int[n];
  }

  /** The last segment of each line after a fill. */
  int[] ends() {
    return ends;
  }

  /** Half the height of about the smallest outline of an aspect that holds so many lines. */
  double leastHalfHeightPx(int lines, double aspect, double atMostPx) {
    double low = (rules.leadingPx() * (lines - 1) + capitalPx) / 2 + rules.marginPx();
    double high = atMostPx;
    if (!(low < high) || !holds(lines, aspect, high)) {
      return Double.POSITIVE_INFINITY;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      boolean holds = holds(lines, aspect, middle);
      low = holds ? low : middle;
      high = holds ? middle : high;
    }
    return high;
  }

  /** Returns true if lines, each as full as its chord allows, hold the text. */
  private boolean holds(int lines, double aspect, double halfHeightPx) {
    measure(lines, aspect, halfHeightPx);
    int first = 0;
    for (int row = 0; row < lines && first < n; row++) {
      int last = first - 1;
      while (last < table.lastOf(first) && table.box(first, last + 1).width() <= chords[row]) {
        last++;
      }
      if (last < first) {
        return false;
      }
      first = last + 1;
    }
    return first >= n;
  }

  private void measure(int lines, double aspect, double halfHeightPx) {
    double halfWidth = Math.min(aspect * halfHeightPx, rules.maxWidthPx() / 2);
    double slant = rules.marginPx() * DIAGONAL;
    double top = -(rules.leadingPx() * (lines - 1) + capitalPx) / 2;
    for (int row = 0; row < lines; row++) {
      double y = top + row * rules.leadingPx();
      double far = Math.max(Math.abs(y), Math.abs(y + capitalPx)) + slant;
      double chord = enclosure.depthPx(halfHeightPx, halfWidth, far) - slant;
      chords[row] = 2 * Math.min(chord, halfWidth - rules.marginPx());
    }
  }

  /**
   * Fills an outline with the breaks of least cost.
   *
   * @return true if there are any; then {@link #ends} has them
   */
  boolean fill(int lines, double aspect, double halfHeightPx) {
    measure(lines, aspect, halfHeightPx);
    Arrays.fill(before, Double.POSITIVE_INFINITY);
    before[0] = 0;
    for (int row = 0; row < lines; row++) {
      fillRow(row, lines);
      double[] swap = before;
      before = after;
      after = swap;
    }
    if (!(before[n] < Double.POSITIVE_INFINITY)) {
      return false;
    }
    int next = n;
    for (int row = lines - 1; row >= 0; row--) {
      ends[row] = next - 1;
      next = from[row][next];
    }
    return true;
  }

  private void fillRow(int row, int lines) {
    Arrays.fill(after, Double.POSITIVE_INFINITY);
    if (from[row] == null) {
      from[row] = new int[n + 1];
    }
    double chord = chords[row];
    for (int first = row; first < n; first++) {
      if (before[first] < Double.POSITIVE_INFINITY) {
        for (int last = first; last <= table.lastOf(first); last++) {
          double width = table.box(first, last).width();
          if (width > chord) {
            break;
          }
          double air = (chord - width) / chord;
          double cost = before[first] + lineCost(first, last, row + 1 == lines) + AIR * air * air;
          if (cost < after[last + 1]) {
            after[last + 1] = cost;
            from[row][last + 1] = first;
          }
        }
      }
    }
  }

  private double lineCost(int first, int last, boolean isLast) {
    if (!rules.weighsBreaks()) {
      return 0;
    }
    double after = isLast || table.isForced(last) ? 0 : costs.after(last);
    return costs.ofLine(first, last) + after;
  }
}
