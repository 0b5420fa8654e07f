package io.github.readfall.plan.order;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Which elements go before which others, and an order that follows from it. If a circle or nothing
 * decides, the order of the script does.
 *
 * @param before for each element, those that go before it
 * @param after for each element, those that go after it
 * @param surely for each element, those that certainly go before it; never in a circle
 */
record Precedence(List<BitSet> before, List<BitSet> after, List<BitSet> surely) {

  /** Two elements of a circle, read in script order against what the two alone would do. */
  record Open(int first, int second) {}

  /**
   * The outcome.
   *
   * @param order every element once
   * @param open pairs for which it goes against {@link #before}
   */
  record Sequence(List<Integer> order, List<Open> open) {}

  /** A number of elements of which nothing is known yet. */
  static Precedence of(int size) {
    return new Precedence(sets(size), sets(size), sets(size));
  }

  private static List<BitSet> sets(int size) {
    List<BitSet> sets = new ArrayList<>(size);
    for (int i = 0; i < size; i++) {
      sets.add(new BitSet(size));
    }
    return sets;
  }

  /** Puts one before another. */
  void put(int first, int second, boolean sure) {
    before.get(second).set(first);
    after.get(first).set(second);
    if (sure) {
      surely.get(second).set(first);
    }
  }

  /** Forgets what is known of two. */
  void forget(int a, int b) {
    for (List<BitSet> said : List.of(before, after, surely)) {
      said.get(a).clear(b);
      said.get(b).clear(a);
    }
  }

  /**
   * An order that keeps everything known (Kahn 1962, Communications of the ACM 5(11)), the earliest
   * of the script first if several could be next. If a circle leaves none, the earliest of a circle
   * that nothing else precedes is next, and the pairs that this breaks are open.
   */
  Sequence sequence() {
    int size = before.size();
    int[] waitsFor = new int[size];
    BitSet left = new BitSet(size);
    BitSet ready = new BitSet(size);
    for (int i = 0; i < size; i++) {
      waitsFor[i] = before.get(i).cardinality();
      left.set(i);
      ready.set(i, waitsFor[i] == 0);
    }
    List<Integer> order = new ArrayList<>(size);
    List<Open> open = new ArrayList<>();
    while (!left.isEmpty()) {
      int next = ready.nextSetBit(0);
      if (next < 0) {
        next = outOfACircle(left);
        broken(next, left, open);
      }
      order.add(next);
      left.clear(next);
      ready.clear(next);
      BitSet freed = after.get(next);
      for (int i = freed.nextSetBit(0); i >= 0; i = freed.nextSetBit(i + 1)) {
        waitsFor[i]--;
        ready.set(i, left.get(i) && waitsFor[i] == 0);
      }
    }
    return new Sequence(List.copyOf(order), List.copyOf(open));
  }

  private void broken(int next, BitSet left, List<Open> open) {
    BitSet ignored = common(before.get(next), left);
    ignored.stream().forEach(other -> open.add(new Open(next, other)));
  }

  /** The earliest of the script in a circle, unless another of it certainly goes before it. */
  private int outOfACircle(BitSet left) {
    BitSet circle = firstCircle(left);
    return circle.stream()
        .filter(i -> !surely.get(i).intersects(circle))
        .findFirst()
        .orElse(circle.nextSetBit(0));
  }

  /** Elements that all go before each other by some path, and that nothing else precedes. */
  private BitSet firstCircle(BitSet left) {
    int at = left.nextSetBit(0);
    while (true) {
      BitSet earlier = reached(at, before, left);
      BitSet notBack = common(earlier, left);
      notBack.andNot(reached(at, after, left));
      if (notBack.isEmpty()) {
        return earlier;
      }
      at = notBack.nextSetBit(0);
    }
  }

  private static BitSet reached(int from, List<BitSet> steps, BitSet within) {
    BitSet reached = new BitSet(within.size());
    BitSet fresh = new BitSet(within.size());
    fresh.set(from);
    while (!fresh.isEmpty()) {
      int at = fresh.nextSetBit(0);
      reached.set(at);
      fresh.or(common(steps.get(at), within));
      fresh.andNot(reached);
    }
    return reached;
  }

  private static BitSet common(BitSet a, BitSet b) {
    BitSet common = (BitSet) a.clone();
    common.and(b);
    return common;
  }
}
