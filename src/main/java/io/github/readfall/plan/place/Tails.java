package io.github.readfall.plan.place;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.plan.Spacing;
import java.util.ArrayList;
import java.util.List;

/**
 * Gives every placed item its tails: towards each speaker, more than half of the way (50 to 60 per
 * cent, N. Piekos, "Comic Book Grammar and Tradition"), or as far as nothing is in its way.
 */
record Tails(List<Candidates> makers, List<Candidate> places, Spacing spacing) {

  private static final double OF_THE_WAY = 0.55;

  /** Lengths tried, as shares of the wanted one; 0 is the shortest. House default, no source. */
  private static final List<Double> SHORTER = List.of(1.0, 0.85, 0.7, 0.55, 0.4, 0.25, 0.0);

  /** Items further apart in the script than this are never in each other's way. */
  private static final int NEIGHBOURS = 8;

  /** A cut wants this much free height, in gaps. House default, no source. */
  private static final double CUT_GAPS = 0.2;

  /** Distance of a tail from another balloon, in gaps. House default, no source. */
  private static final double CLEAR_GAPS = 0.7;

  /** The tips of each item's tails, one for each speaker. */
  List<List<XY>> tips() {
    List<List<Pointer>> tails = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      tails.add(tails(i, tails));
    }
    List<List<XY>> tips = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      List<XY> drawn = tails.get(i).stream().map(Pointer::tip).toList();
      List<XY> fixed = makers.get(i).item().fixedTips();
      tips.add(fixed.isEmpty() ? drawn : fixed);
    }
    return tips;
  }

  private List<Pointer> tails(int i, List<List<Pointer>> before) {
    List<Pointer> tails = new ArrayList<>();
    Candidates maker = makers.get(i);
    int speakers = places.get(i).tail().isPresent() ? maker.item().speakers().size() : 0;
    for (int speaker = 0; speaker < speakers; speaker++) {
      int to = speaker;
      maker
          .shortTail(places.get(i).lastBox(), speaker)
          .map(shortest -> tail(i, to, shortest, before))
          .ifPresent(tails::add);
    }
    return tails;
  }

  private Pointer tail(int i, int speaker, Pointer shortest, List<List<Pointer>> before) {
    Candidates maker = makers.get(i);
    if (speaker < maker.item().fixedTips().size()) {
      return shortest;
    }
    XY target = maker.target(places.get(i).lastBox(), speaker);
    double way = shortest.exit().distanceTo(target);
    double wanted = Math.min(spacing.longTailPx(), OF_THE_WAY * way);
    List<Pointer> free = new ArrayList<>();
    for (double share : SHORTER) {
      double length = Math.max(shortest.lengthPx(), share * wanted);
      Pointer tail = Pointer.towards(shortest.exit(), target, length);
      if (isFree(i, tail, before)) {
        free.add(tail);
      }
    }
    return free.stream()
        .filter(tail -> leavesRoomToCut(i, tail))
        .findFirst()
        .or(() -> free.stream().findFirst())
        .orElse(shortest);
  }

  /** Returns true if the strip can still be cut between an item with this tail and the next one. */
  private boolean leavesRoomToCut(int i, Pointer tail) {
    if (i + 1 == places.size()) {
      return true;
    }
    double next = places.get(i + 1).box().y();
    return places.get(i).box().bottom() > next
        || tail.tip().y() < next - CUT_GAPS * spacing.gapPx();
  }

  private boolean isFree(int i, Pointer tail, List<List<Pointer>> before) {
    double clear = CLEAR_GAPS * spacing.gapPx();
    for (Box obstacle : makers.get(i).area().obstacles()) {
      if (tail.meets(obstacle, 0)) {
        return false;
      }
    }
    int last = Math.min(places.size() - 1, i + NEIGHBOURS);
    for (int j = Math.max(0, i - NEIGHBOURS); j <= last; j++) {
      List<Pointer> others = j < i ? before.get(j) : places.get(j).tail().stream().toList();
      boolean inTheWay =
          j != i
              && (tail.meets(places.get(j).box(), clear)
                  || others.stream().anyMatch(other -> other.meets(tail, clear)));
      if (inTheWay) {
        return false;
      }
    }
    return true;
  }
}
