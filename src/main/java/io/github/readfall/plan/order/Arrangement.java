package io.github.readfall.plan.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;

/**
 * Elements of the script in reading order, and what is wrong with that order.
 *
 * @param met every element's place in the script, from 0, in reading order
 * @param open pairs in a circle, the earlier of the script first
 * @param relation compares any two
 * @param judged all elements in an order that agrees with the eye wherever two can be out of order,
 *     and with the script wherever that leaves a choice
 */
record Arrangement(List<Integer> met, Set<Pair> open, Relation relation, List<Integer> judged) {

  /** Compares any two elements as a reader's eye does. */
  interface Relation {

    /** Which of two is read first; the earlier of the script is named first. */
    ReadFirst meeting(int earlier, int later);

    /** Returns true if elements compared for this reason can be out of order at all. */
    boolean judges(ReadingReason why);
  }

  /** Two elements, the earlier of the script first. */
  record Pair(int earlier, int later) {
    static Pair of(int a, int b) {
      return new Pair(Math.min(a, b), Math.max(a, b));
    }
  }

  /**
   * Arranges groups that are read one after another.
   *
   * @param groups in that order, the elements of each in script order
   */
  static Arrangement of(List<List<Integer>> groups, Relation relation) {
    List<Integer> met = new ArrayList<>();
    List<Integer> judged = new ArrayList<>();
    Set<Pair> open = new HashSet<>();
    for (List<Integer> group : groups) {
      Precedence eye = Precedence.of(group.size());
      List<Pair> unjudged = compare(group, relation, eye);
      List<Integer> order = follow(eye, group, open);
      met.addAll(order);
      unjudged.forEach(pair -> eye.forget(pair.earlier(), pair.later()));
      judged.addAll(unjudged.isEmpty() ? order : follow(eye, group, open));
    }
    return new Arrangement(List.copyOf(met), Set.copyOf(open), relation, List.copyOf(judged));
  }

  /** Compares all pairs of a group, and returns those that cannot be out of order. */
  private static List<Pair> compare(List<Integer> group, Relation relation, Precedence eye) {
    List<Pair> unjudged = new ArrayList<>();
    for (int b = 1; b < group.size(); b++) {
      for (int a = 0; a < b; a++) {
        ReadFirst meeting = relation.meeting(group.get(a), group.get(b));
        if (meeting.why() != ReadingReason.NESTED) {
          int first = meeting.inOrder() ? a : b;
          eye.put(first, a + b - first, meeting.why().isCertain());
        }
        if (!relation.judges(meeting.why())) {
          unjudged.add(new Pair(a, b));
        }
      }
    }
    return unjudged;
  }

  private static List<Integer> follow(Precedence precedence, List<Integer> group, Set<Pair> open) {
    Precedence.Sequence sequence = precedence.sequence();
    sequence.open().stream()
        .map(pair -> Pair.of(group.get(pair.first()), group.get(pair.second())))
        .forEach(open::add);
    return sequence.order().stream().map(group::get).toList();
  }

  /** Returns true if two elements are read in another order than the script has them. */
  boolean isInverted(int a, int b) {
    Pair pair = Pair.of(a, b);
    ReadFirst meeting = relation.meeting(pair.earlier(), pair.later());
    return !meeting.inOrder() && relation.judges(meeting.why()) && !open.contains(pair);
  }

  /** The fewest elements to move, in script order, so that nothing is inverted any more. */
  List<Displaced> displaced(IntPredicate pinned, IntPredicate atHome) {
    int[] placeOf = new int[judged.size()];
    for (int place = 0; place < placeOf.length; place++) {
      placeOf[judged.get(place)] = place;
    }
    return Moves.smallest(judged, pinned, atHome).stream()
        .map(item -> new Displaced(item, invertedWith(item, placeOf)))
        .filter(displaced -> !displaced.others().isEmpty())
        .toList();
  }

  /**
   * The elements inverted with one; only those on the wrong side of it in the judged order can be.
   */
  private List<Integer> invertedWith(int item, int[] placeOf) {
    List<Integer> others = new ArrayList<>();
    for (int other = 0; other < placeOf.length; other++) {
      boolean metLater = placeOf[other] > placeOf[item];
      if (other != item && metLater != other > item && isInverted(item, other)) {
        others.add(other);
      }
    }
    return others;
  }

  /** The rank of each element in reading order. */
  int[] ranks() {
    int[] ranks = new int[met.size()];
    Arrays.setAll(ranks, i -> i);
    for (int place = 0; place < ranks.length; place++) {
      ranks[met.get(place)] = place;
    }
    return ranks;
  }
}
