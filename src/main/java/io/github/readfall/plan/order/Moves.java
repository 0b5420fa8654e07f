package io.github.readfall.plan.order;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.function.IntToLongFunction;
import java.util.stream.IntStream;

/**
 * Finds the fewest elements to move so that the rest is read in script order: all but a heaviest
 * increasing subsequence, found in O(n log n) with a binary indexed tree (Fenwick 1994, Software:
 * Practice and Experience 24(3)). Worked example: read as 3 0 1 2 4, only 3 has to move.
 */
public final class Moves {

  private Moves() {}

  /**
   * The elements to move, in script order. As many pinned ones as possible stay, then as many as
   * possible; of several choices, the one that keeps the earliest of the script.
   *
   * @param met the elements' places in the script, from 0, in reading order
   * @param pinned by place in the script
   */
  public static List<Integer> smallest(List<Integer> met, IntPredicate pinned) {
    return smallest(met, pinned, item -> true);
  }

  /**
   * The elements to move, in script order.
   *
   * @param atHome by place in the script; of sets as small, the one that keeps the most of them
   */
  public static List<Integer> smallest(
      List<Integer> met, IntPredicate pinned, IntPredicate atHome) {
    long all = met.size() + 1L;
    boolean[] stays = new boolean[met.size()];
    IntToLongFunction weight =
        item -> (pinned.test(item) ? all * all : 0) + all + (atHome.test(item) ? 1 : 0);
    kept(met, weight).forEach(item -> stays[item] = true);
    return IntStream.range(0, met.size()).filter(item -> !stays[item]).boxed().toList();
  }

  private static List<Integer> kept(List<Integer> met, IntToLongFunction weight) {
    int size = met.size();
    long[] weights = new long[size]; // by place in reading order
    long[] heaviest = new long[size]; // of what can stay from that place on, it included
    long[] tree = new long[size + 1];
    for (int at = size - 1; at >= 0; at--) {
      weights[at] = weight.applyAsLong(met.get(at));
      heaviest[at] = weights[at] + most(tree, size - 1 - met.get(at));
      raise(tree, size - met.get(at), heaviest[at]);
    }
    return earliest(met, weights, heaviest, most(tree, size));
  }

  private static List<Integer> earliest(
      List<Integer> met, long[] weights, long[] heaviest, long total) {
    Map<Long, List<Integer>> places = new HashMap<>();
    for (int at = 0; at < heaviest.length; at++) {
      places.computeIfAbsent(heaviest[at], h -> new ArrayList<>()).add(at);
    }
    List<Integer> kept = new ArrayList<>();
    int last = -1;
    for (long rest = total; rest > 0; rest -= weights[last]) {
      last = earliest(met, places.getOrDefault(rest, List.of()), last);
      kept.add(met.get(last));
    }
    return kept;
  }

  /** The place of the earliest of the script that can follow; there always is one. */
  private static int earliest(List<Integer> met, List<Integer> places, int last) {
    int best = -1;
    for (int at : places) {
      boolean follows = last < 0 || (at > last && met.get(at) > met.get(last));
      if (follows && (best < 0 || met.get(at) < met.get(best))) {
        best = at;
      }
    }
    return best;
  }

  /** The greatest of the first {@code count} values. */
  private static long most(long[] tree, int count) {
    long most = 0;
    for (int i = count; i > 0; i -= i & -i) {
      most = Math.max(most, tree[i]);
    }
    return most;
  }

  private static void raise(long[] tree, int place, long value) {
    for (int i = place; i < tree.length; i += i & -i) {
      tree[i] = Math.max(tree[i], value);
    }
  }
}
