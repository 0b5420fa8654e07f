package io.github.readfall.type.balloon;

import io.github.readfall.base.OneCall;
import io.github.readfall.type.text.BreakCosts;
import io.github.readfall.type.text.LineBox;
import io.github.readfall.type.text.LineTable;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** One search for the best breaks; see {@link Fitter}. Used once, by one thread. */
@OneCall
final class BreakSearch {

  /** Greatest difference of a line's box from those of its segments: see the text's overshoot. */
  private static final double BOX_SLACK_PX = 1;

  private static final double TIE = 1e-9;

  /** Rewards never make an outline count for less than this share of its area. */
  private static final double LEAST_FACTOR = 0.4;

  /** The share of an area that weighs as much as a cost of 1, if costs come first. */
  private static final double AREA_WEIGHT = 1e-3;

  private static final double HALVING_PX = 0.01;

  /** Longer texts are balanced more roughly; nobody letters them. */
  private static final int SHORT_TEXT = 100;

  /** Texts of up to so many segments have few enough breakings to start from balanced lines. */
  private static final int FEW = 14;

  /** Aspects of trial outlines. */
  private static final List<Double> ASPECTS = List.of(1.2, 1.6, 2.1);

  /** By how much trial outlines are higher than the smallest, to avoid costs. */
  private static final List<Double> HIGHER = List.of(1.0, 1.06, 1.15);

  private final LineTable table;
  private final BreakCosts costs;
  private final Enclosure enclosure;
  private final FitRules rules;
  private final int n;
  private final int mostSteps;
  private final double[] widthFrom;
  private final double[] leastCostFrom;
  private final double widestSegment;
  private final double leastAscent;
  private final double mostAscent;
  private final double leastDescent;
  private final double mostDescent;

  private final LineBox[] lines;
  private final int[] ends;
  private final double[] limits;
  private final double[] roomFrom;
  private final double[] aspects;

  private final double[][] costsToCome;

  private double leastCost;
  private double bestScore = Double.POSITIVE_INFINITY;
  private final double boundPx2;
  private double leastMiddle;
  private double mostMiddle;
  private Enclosed bestEnclosed = Enclosed.NONE;
  private int[] bestEnds = new int[0];
  private double nextWidth;
  private int steps;

  BreakSearch(LineTable table, Enclosure enclosure, FitRules rules, double atMostPx2) {
    this.table = table;
    this.costs = table.costs();
    this.enclosure = enclosure;
    this.rules = rules;
    this.boundPx2 = atMostPx2;
    this.n = table.size();
    this.mostSteps = n <= FEW ? Fitter.EXACT_STEPS : Fitter.FEW_STEPS;
    this.widthFrom = new double[n + 1];
    this.leastCostFrom = new double[n + 1];
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    double leastBelow = Double.POSITIVE_INFINITY;
    double mostBelow = Double.NEGATIVE_INFINITY;
    double widest = 0;
    for (int i = n - 1; i >= 0; i--) {
      LineBox word = table.box(i, i);
      widthFrom[i] = widthFrom[i + 1] + word.width() - word.balancePx();
      leastCostFrom[i] = leastCostFrom[i + 1] + Math.min(0, breakCost(i));
      widest = Math.max(widest, word.width());
      least = Math.min(least, -word.top());
      most = Math.max(most, -word.top());
      leastBelow = Math.min(leastBelow, word.bottom());
      mostBelow = Math.max(mostBelow, word.bottom());
    }
    double slack = most - least + mostBelow - leastBelow > 0 ? BOX_SLACK_PX : 0;
    this.widestSegment = widest;
    this.leastAscent = least - slack;
    this.mostAscent = most + slack;
    this.leastDescent = leastBelow - slack;
    this.mostDescent = mostBelow + slack;
    this.lines = new LineBox[n];
    this.ends = new int[n];
    this.limits = new double[n];
    this.roomFrom = new double[n + 1];
    this.costsToCome = n > SHORT_TEXT ? new double[0][0] : new double[n + 1][n + 1];
    this.leastCost = leastCostFrom[0];
    this.aspects = new double[2 * (n + 1)];
  }

  Optional<Fit> best() {
    return bestEnclosed.exists()
        ? Optional.of(new Fit(Arrays.stream(bestEnds).boxed().toList(), bestEnclosed))
        : Optional.empty();
  }

  /** Tries each number of lines at the least width that takes no more. */
  void startFromBalancedLines() {
    double widest = 0;
    for (int i = 0; i < n; i++) {
      widest = Math.max(widest, table.box(i, table.lastOf(i)).width());
    }
    int guess = Math.max(guessLines(), fill(widest));
    int stride = Math.max(1, n / SHORT_TEXT);
    for (int away = 0; away < n; away += stride) {
      boolean more = guess + away <= n && startFromBalancedLines(guess + away, widest);
      boolean fewer = away > 0 && guess - away >= 1 && startFromBalancedLines(guess - away, widest);
      if (away > stride && !more && !fewer && bestEnclosed.exists()) {
        break;
      }
    }
  }

  /** The number of lines that makes the stack about half as wide again as it is high. */
  private int guessLines() {
    double squares = widthFrom[0] / (1.5 * rules.leadingPx());
    return Math.max(1, Math.min(n, (int) Math.round(Math.sqrt(squares))));
  }

  /** Returns true if so many lines could still have made the smallest balanced outline. */
  private boolean startFromBalancedLines(int count, double widestPx) {
    if (!isAskedFor(count)) {
      return !bestEnclosed.exists();
    }
    if (!hasRoom(count, worthwhilePx2(leastCostFrom[0]))) {
      return false;
    }
    int found = n > SHORT_TEXT ? balanceByHalving(count, widestPx) : balance(count);
    if (found == count) {
      weigh(count, cost(count));
    }
    return true;
  }

  /**
   * Fills lines at the least width that takes no more lines than asked: widens by the least that
   * lets any line take one more segment, until it does.
   *
   * @return the number of lines; more than asked if the widest lines are too narrow
   */
  private int balance(int count) {
    double width = Math.max(widestSegment, widthFrom[0] / count);
    int found = fill(width);
    while (found > count && nextWidth < Double.POSITIVE_INFINITY) {
      found = fill(nextWidth);
    }
    return found;
  }

  /** The same for long texts, approximately. */
  private int balanceByHalving(int count, double widestPx) {
    double narrow = Math.max(widestSegment, widthFrom[0] / count);
    double wide = Math.max(narrow, widestPx);
    while (wide - narrow > HALVING_PX) {
      double middle = (narrow + wide) / 2;
      if (fill(middle) <= count) {
        wide = middle;
      } else {
        narrow = middle;
      }
    }
    return fill(wide);
  }

  /**
   * Fills trial outlines of a few aspects and sizes with about as many lines as the best so far.
   */
  void startFromChords() {
    if (n <= FEW) {
      improve();
    }
    if (n <= FEW || n > SHORT_TEXT) {
      return;
    }
    ChordFill fill = new ChordFill(table, enclosure, rules);
    int start = rules.lines() > 0 ? rules.lines() : Math.max(1, bestEnds.length);
    for (int away = 0; away < n; away++) {
      boolean more = start + away <= n && startFromChords(fill, start + away);
      boolean fewer = away > 0 && start - away >= 1 && startFromChords(fill, start - away);
      if (away > 0 && !more && !fewer) {
        break;
      }
    }
    improve();
  }

  /** Returns true if so many lines make a better outline. */
  private boolean startFromChords(ChordFill fill, int count) {
    if (!isAskedFor(count) || !hasRoom(count, worthwhilePx2(leastCostFrom[0]))) {
      return false;
    }
    double before = bestScore;
    double highest = 2 * Math.max(bestEnclosed.halfHeightPx(), count * rules.leadingPx());
    for (double usual : ASPECTS) {
      double aspect = Math.max(rules.minAspect(), Math.min(rules.maxAspect(), usual));
      double least = fill.leastHalfHeightPx(count, aspect, highest);
      for (int i = 0; i < HIGHER.size() && least < Double.POSITIVE_INFINITY; i++) {
        if (fill.fill(count, aspect, least * HIGHER.get(i))) {
          weigh(fill.ends(), count);
        }
      }
    }
    return bestScore < before;
  }

  private void weigh(int[] others, int count) {
    int first = 0;
    for (int row = 0; row < count; row++) {
      ends[row] = others[row];
      lines[row] = table.box(first, ends[row]);
      first = ends[row] + 1;
    }
    weigh(count, cost(count));
  }

  /** Moves one break at a time, as long as that is better. */
  private void improve() {
    double before = Double.POSITIVE_INFINITY;
    while (bestScore < before) {
      before = bestScore;
      for (int row = 0; row + 1 < bestEnds.length; row++) {
        move(row, -1);
        move(row, 1);
      }
    }
  }

  private void move(int row, int by) {
    int[] moved = bestEnds.clone();
    moved[row] += by;
    int first = row == 0 ? 0 : moved[row - 1] + 1;
    boolean whole = moved[row] >= first && moved[row] <= table.lastOf(first);
    if (whole && moved[row] < moved[row + 1] && moved[row + 1] <= table.lastOf(moved[row] + 1)) {
      weigh(moved, moved.length);
    }
  }

  /**
   * Fills each line as far as a width allows, and notes the next width at which that would change.
   *
   * @return how many lines it took
   */
  private int fill(double widthPx) {
    int count = 0;
    nextWidth = Double.POSITIVE_INFINITY;
    for (int first = 0; first < n; first = ends[count - 1] + 1) {
      int last = first;
      while (last < table.lastOf(first) && table.box(first, last + 1).width() <= widthPx) {
        last++;
      }
      if (last < table.lastOf(first)) {
        nextWidth = Math.min(nextWidth, table.box(first, last + 1).width());
      }
      lines[count] = table.box(first, last);
      ends[count++] = last;
    }
    return count;
  }

  /**
   * Tries every breaking that could still be better, nearest number of lines first. Long texts have
   * too many.
   */
  void tryEveryBreak() {
    if (n > SHORT_TEXT) {
      return;
    }
    int start = Math.max(1, bestEnds.length);
    for (int away = 0; away < n && steps <= mostSteps; away++) {
      boolean more = start + away <= n && tryEveryBreak(start + away);
      boolean fewer = away > 0 && start - away >= 1 && tryEveryBreak(start - away);
      if (away > 1 && !more && !fewer && bestEnclosed.exists()) {
        break;
      }
    }
  }

  private boolean tryEveryBreak(int count) {
    if (!isAskedFor(count)) {
      return !bestEnclosed.exists();
    }
    if (!hasRoom(count, worthwhilePx2(leastCostFrom[0]))) {
      return false;
    }
    sumCostsToCome(count);
    if (worthwhilePx2(leastCost) > 0 && hasRoom(count, worthwhilePx2(leastCost))) {
      sumCostsToCome(count);
      enclosure.openRange(rules, worthwhilePx2(leastCost), aspects);
      descend(count, 0, 0, 0);
    }
    leastCost = leastCostFrom[0];
    return true;
  }

  /** For each line, the least that it and those after it cost, from each segment, as they fit. */
  private void sumCostsToCome(int count) {
    Arrays.fill(costsToCome[count], Double.POSITIVE_INFINITY);
    costsToCome[count][n] = 0;
    for (int row = count - 1; row >= 0; row--) {
      Arrays.fill(costsToCome[row], Double.POSITIVE_INFINITY);
      for (int first = row; first < n; first++) {
        costsToCome[row][first] = costToCome(row, first, row == count - 1);
      }
    }
    leastCost = count == 1 ? 0 : costsToCome[0][0];
  }

  private double costToCome(int row, int first, boolean isLast) {
    double[] next = costsToCome[row + 1];
    double least = Double.POSITIVE_INFINITY;
    for (int last = first; last <= table.lastOf(first); last++) {
      if (table.box(first, last).width() > 2 * limits[row]) {
        break;
      }
      if (next[last + 1] < Double.POSITIVE_INFINITY) {
        double cost = lineCost(first, last) + (isLast ? 0 : breakCost(last));
        least = Math.min(least, cost + next[last + 1]);
      }
    }
    return least;
  }

  /** The largest outline that could still win at a cost; negative if none could. */
  private double worthwhilePx2(double cost) {
    double most = boundPx2 * (1 + TIE);
    if (rules.costsFirst()) {
      return cost < bestScore ? Math.min(most, (bestScore - cost) / AREA_WEIGHT * boundPx2) : -1;
    }
    return Math.min(bestScore / factor(cost), most);
  }

  private double score(double areaPx2, double cost) {
    return rules.costsFirst() ? cost + AREA_WEIGHT * areaPx2 / boundPx2 : areaPx2 * factor(cost);
  }

  private static double factor(double cost) {
    return Math.max(LEAST_FACTOR, 1 + cost);
  }

  /** Sets the limits of each line for outlines of less than an area; whether the text fits. */
  private boolean hasRoom(int count, double areaPx2) {
    double pitch = rules.leadingPx();
    double span = (count - 1) * pitch;
    leastMiddle = (span - mostAscent + leastDescent) / 2;
    mostMiddle = (span - leastAscent + mostDescent) / 2;
    double height = Math.max(0, span + leastAscent + leastDescent);
    roomFrom[count] = 0;
    for (int row = count - 1; row >= 0; row--) {
      double above = leastMiddle - rules.maxShiftPx() - row * pitch + leastAscent;
      double below = row * pitch + leastDescent - mostMiddle - rules.maxShiftPx();
      double distance = Math.max(0, Math.max(above, below));
      limits[row] =
          areaPx2 == Double.POSITIVE_INFINITY
              ? rules.maxWidthPx() / 2
              : enclosure.widestHalfPx(rules, areaPx2, distance, height);
      if (limits[row] < 0) {
        return false;
      }
      roomFrom[row] = roomFrom[row + 1] + 2 * limits[row];
    }
    return widthFrom[0] <= roomFrom[0];
  }

  private void descend(int count, int row, int first, double cost) {
    boolean isLast = row == count - 1;
    int last = isLast ? Math.max(first, n - 1) : first;
    for (; last <= table.lastOf(first) && last < n - (count - 1 - row); last++) {
      LineBox box = table.box(first, last);
      if (box.width() > 2 * limits[row] || ++steps > mostSteps) {
        return;
      }
      double soFar = cost + lineCost(first, last) + (isLast ? 0 : breakCost(last));
      double whole = count == 1 ? 0 : soFar + costsToCome[row + 1][last + 1];
      double worthPx2 = worthwhilePx2(whole);
      if (widthFrom[last + 1] <= roomFrom[row + 1] && leavesAnAspect(row, box, worthPx2)) {
        lines[row] = box;
        ends[row] = last;
        if (isLast) {
          weigh(count, count == 1 ? 0 : soFar + shapeCost(count));
        } else {
          descend(count, row + 1, last + 1, soFar);
        }
      }
    }
  }

  /** Returns true if a worthwhile outline holds the lines so far at some aspect. */
  private boolean leavesAnAspect(int row, LineBox box, double areaPx2) {
    if (areaPx2 < 0) {
      return false;
    }
    double baseline = row * rules.leadingPx();
    double above = leastMiddle - rules.maxShiftPx() - baseline - box.top();
    double below = baseline + box.bottom() - mostMiddle - rules.maxShiftPx();
    double distance = Math.max(0, Math.max(above, below));
    int next = 2 * (row + 1);
    aspects[next] = aspects[next - 2];
    aspects[next + 1] = aspects[next - 1];
    return enclosure.narrow(rules, areaPx2, box.width() / 2, distance, aspects, next);
  }

  private boolean isAskedFor(int count) {
    return rules.lines() == 0 || rules.lines() == count;
  }

  private void weigh(int count, double cost) {
    if (Arrays.equals(ends, 0, count, bestEnds, 0, bestEnds.length)) {
      return;
    }
    double atMost = worthwhilePx2(cost);
    if (atMost < 0) {
      return;
    }
    Stack stack = Stack.of(lines, count, rules.leadingPx());
    if (offer(enclosure.smallest(stack, rules, atMost), count, cost)) {
      hasRoom(count, worthwhilePx2(leastCost));
    }
  }

  private boolean offer(Enclosed enclosed, int count, double cost) {
    double score = score(enclosed.areaPx2(), cost);
    if (!(score < bestScore * (1 - TIE))) {
      return false;
    }
    bestScore = score;
    bestEnclosed = enclosed;
    bestEnds = Arrays.copyOf(ends, count);
    return true;
  }

  private double cost(int count) {
    if (count == 1) {
      return 0;
    }
    double cost = shapeCost(count);
    for (int row = 0; row < count; row++) {
      cost += lineCost(row == 0 ? 0 : ends[row - 1] + 1, ends[row]);
      cost += row + 1 < count ? breakCost(ends[row]) : 0;
    }
    return cost;
  }

  private double breakCost(int segment) {
    return rules.weighsBreaks() && segment + 1 < n && !table.isForced(segment)
        ? costs.after(segment)
        : 0;
  }

  private double lineCost(int first, int last) {
    return rules.weighsBreaks() ? costs.ofLine(first, last) : 0;
  }

  private double shapeCost(int count) {
    return rules.weighsBreaks() ? costs.ofShape(ends, count) : 0;
  }
}
