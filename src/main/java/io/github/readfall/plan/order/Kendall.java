package io.github.readfall.plan.order;

import java.util.List;

/**
 * The distance of an order from the script's (Kendall 1938, Biometrika 30). Worked example: read as
 * 0 2 1 3 5 4 6, two of 21 pairs are inverted, and tau is 0.81.
 *
 * @param size number of elements
 * @param inversions pairs that are read the other way round; not negative
 */
public record Kendall(int size, long inversions) {

  /**
   * Counts inversions while merging, in O(n log n).
   *
   * @param met the elements' places in the script, from 0, in reading order
   */
  public static Kendall of(List<Integer> met) {
    int[] order = met.stream().mapToInt(Integer::intValue).toArray();
    return new Kendall(order.length, sort(order, new int[order.length], 0, order.length));
  }

  /** The number of pairs to compare. */
  public long pairs() {
    return (long) size * (size - 1) / 2;
  }

  /** From 1, the script's order, to -1, the reverse; 1 if there is nothing to compare. */
  public double tau() {
    return size < 2 ? 1 : 1 - 4.0 * inversions / ((double) size * (size - 1));
  }

  private static long sort(int[] order, int[] spare, int from, int to) {
    if (to - from < 2) {
      return 0;
    }
    int middle = (from + to) / 2;
    long inversions = sort(order, spare, from, middle) + sort(order, spare, middle, to);
    int left = from;
    int right = middle;
    for (int at = from; at < to; at++) {
      if (right == to || (left < middle && order[left] <= order[right])) {
        spare[at] = order[left++];
      } else {
        spare[at] = order[right++];
        inversions += middle - left;
      }
    }
    System.arraycopy(spare, from, order, from, to - from);
    return inversions;
  }
}
