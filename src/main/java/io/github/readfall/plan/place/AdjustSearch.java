package io.github.readfall.plan.place;

import io.github.readfall.base.OneCall;
import io.github.readfall.base.geom.XY;
import java.util.ArrayList;
import java.util.List;

/**
 * Moves items a little, one by one, as long as it pays: the places of {@link PlaceSearch} are on a
 * grid, and the best place may be between its points. The cost never rises.
 */
@OneCall
final class AdjustSearch {

  /** Strip pixels. House defaults, no source. */
  private static final List<Double> STEPS = List.of(96.0, 48.0, 24.0, 12.0, 6.0);

  private static final int ROUNDS = 6;

  /** Items further apart in the script than this are never beside each other. */
  private static final int NEIGHBOURS = 6;

  private final List<Candidates> makers;
  private final List<Candidate> places;
  private final Pairs pairs;

  AdjustSearch(List<Candidates> makers, List<Candidate> start, Pairs pairs) {
    this.makers = makers;
    this.places = new ArrayList<>(start);
    this.pairs = pairs;
  }

  /** The places after adjusting. */
  List<Candidate> adjusted() {
    for (double step : STEPS) {
      boolean better = true;
      for (int round = 0; better && round < ROUNDS; round++) {
        better = false;
        for (int i = 0; i < places.size(); i++) {
          better |= makers.get(i).item().fixedAt().isEmpty() && tryMoves(i, step);
        }
      }
    }
    return places;
  }

  private boolean tryMoves(int i, double step) {
    double best = costAt(i, places.get(i));
    boolean better = false;
    for (double[] way : new double[][] {{0, step}, {0, -step}, {step, 0}, {-step, 0}}) {
      XY at = places.get(i).at().plus(way[0], way[1]);
      if (makers.get(i).allows(at)) {
        Candidate moved = makers.get(i).at(at);
        double cost = costAt(i, moved);
        if (cost < best - 1e-9) {
          best = cost;
          places.set(i, moved);
          better = true;
        }
      }
    }
    return better;
  }

  /** The cost of an item at a place, with all its neighbours where they are. */
  double costAt(int i, Candidate place) {
    double cost = place.cost();
    Candidates mine = makers.get(i);
    int last = Math.min(places.size() - 1, i + NEIGHBOURS);
    for (int j = Math.max(0, i - NEIGHBOURS); j <= last; j++) {
      Candidates other = makers.get(j);
      if (j != i && pairs.mayMeet(mine.item(), mine.area(), other.item(), other.area())) {
        cost +=
            j < i
                ? pairs.cost(other.item(), places.get(j), mine.item(), place)
                : pairs.cost(mine.item(), place, other.item(), places.get(j));
      }
    }
    return cost;
  }
}
