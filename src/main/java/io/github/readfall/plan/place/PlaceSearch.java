package io.github.readfall.plan.place;

import io.github.readfall.base.OneCall;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Chooses a place for every item at once, by dynamic programming down the strip. A state is the
 * places of two successive items, so each item is weighed against the two before it; that is exact
 * as long as no three balloons are side by side. Items that cannot meet divide the strip into
 * stretches, each solved by itself at the cost of its own length.
 */
@OneCall
final class PlaceSearch {

  private final List<PlacementItem> items;
  private final List<PlacementArea> areas;
  private final List<List<Candidate>> candidates;
  private final Pairs pairs;
  private final int[] chosen;

  /**
   * A search.
   *
   * @param items in script order
   * @param areas placement area of each item
   * @param candidates of each item; none is empty
   */
  PlaceSearch(
      List<PlacementItem> items,
      List<PlacementArea> areas,
      List<List<Candidate>> candidates,
      Pairs pairs) {
    this.items = items;
    this.areas = areas;
    this.candidates = candidates;
    this.pairs = pairs;
    this.chosen = new int[items.size()];
  }

  /** The cheapest place of each item. */
  List<Candidate> cheapest() {
    int from = 0;
    for (int i = 1; i <= items.size(); i++) {
      boolean parted =
          i == items.size() || (!meet(i - 1, i) && (i - 2 < from || !meet(i - 2, i)) && !over(i));
      if (parted) {
        solve(from, i);
        from = i;
      }
    }
    List<Candidate> cheapest = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      cheapest.add(candidates.get(i).get(chosen[i]));
    }
    return cheapest;
  }

  /** Returns true if the item before one may meet the item after it. */
  private boolean over(int i) {
    return i + 1 < items.size() && meet(i - 1, i + 1);
  }

  private boolean meet(int a, int b) {
    return pairs.mayMeet(items.get(a), areas.get(a), items.get(b), areas.get(b));
  }

  private void solve(int from, int to) {
    double[][] best = {own(from)}; // by the place of the one before, then by its own
    List<int[][]> ways = new ArrayList<>();
    for (int i = from + 1; i < to; i++) {
      int[][] way = new int[size(i - 1)][size(i)];
      best = step(i, i - 2 >= from, best, way);
      ways.add(way);
    }
    walkBack(from, to, best, ways);
  }

  /** Adds one item: from the states of the two before it to those of it and the one before. */
  private double[][] step(int i, boolean weighsSecond, double[][] best, int[][] way) {
    double[] own = own(i);
    double[][] near = between(i - 1, i);
    boolean meetsSecond = weighsSecond && meet(i - 2, i);
    double[][] far = meetsSecond ? acrossOne(i - 2, i) : new double[best.length][1];
    double[][] next = new double[size(i - 1)][size(i)];
    double[] least = new double[far[0].length];
    int[] by = new int[least.length];
    for (int b = 0; b < next.length; b++) {
      leastBefore(b, best, far, least, by);
      for (int c = 0; c < own.length; c++) {
        int at = meetsSecond ? c : 0;
        next[b][c] = least[at] + near[b][c] + own[c];
        way[b][c] = by[at];
      }
    }
    return next;
  }

  /**
   * For each place of the item, the cheapest place of the one two before it, and its cost. A place
   * whose own cost is as much as the dearest found so far is passed over.
   */
  private static void leastBefore(
      int b, double[][] best, double[][] far, double[] least, int[] by) {
    Arrays.fill(least, Double.POSITIVE_INFINITY);
    double dearest = Double.POSITIVE_INFINITY;
    for (int a = 0; a < best.length; a++) {
      double before = best[a][b];
      if (before < dearest && takeLess(a, before, far[a], least, by)) {
        dearest = greatest(least);
      }
    }
  }

  private static boolean takeLess(int a, double before, double[] far, double[] least, int[] by) {
    boolean taken = false;
    for (int c = 0; c < least.length; c++) {
      double cost = before + far[c];
      if (cost < least[c]) {
        least[c] = cost;
        by[c] = a;
        taken = true;
      }
    }
    return taken;
  }

  private static double greatest(double[] costs) {
    double greatest = 0;
    for (double cost : costs) {
      greatest = cost > greatest ? cost : greatest;
    }
    return greatest;
  }

  private void walkBack(int from, int to, double[][] best, List<int[][]> ways) {
    int b = 0;
    int c = 0;
    for (int i = 0; i < best.length; i++) {
      for (int j = 0; j < best[i].length; j++) {
        if (best[i][j] < best[b][c]) {
          b = i;
          c = j;
        }
      }
    }
    for (int i = to - 1; i >= from; i--) {
      chosen[i] = c;
      int before = i > from ? ways.get(i - 1 - from)[b][c] : 0;
      c = b;
      b = before;
    }
  }

  private double[] own(int i) {
    return candidates.get(i).stream().mapToDouble(Candidate::cost).toArray();
  }

  private int size(int i) {
    return candidates.get(i).size();
  }

  private double[][] between(int before, int after) {
    double[][] costs = new double[size(before)][size(after)];
    for (int a = 0; a < costs.length; a++) {
      Candidate first = candidates.get(before).get(a);
      for (int b = 0; b < costs[a].length; b++) {
        Candidate second = candidates.get(after).get(b);
        costs[a][b] = pairs.cost(items.get(before), first, items.get(after), second);
      }
    }
    return costs;
  }

  private double[][] acrossOne(int before, int after) {
    double[][] costs = between(before, after);
    if (items.get(before).panel() != items.get(after).panel()) {
      return costs;
    }
    for (int a = 0; a < costs.length; a++) {
      for (int b = 0; b < costs[a].length; b++) {
        costs[a][b] +=
            pairs.besideThird(candidates.get(before).get(a), candidates.get(after).get(b));
      }
    }
    return costs;
  }
}
