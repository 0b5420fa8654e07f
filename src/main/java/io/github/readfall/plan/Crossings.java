package io.github.readfall.plan;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** Counts what a cut at some height goes through. Heights are whole strip pixels. */
final class Crossings {

  private final int[] tops;
  private final int[] bottoms;

  private Crossings(int[] tops, int[] bottoms) {
    this.tops = tops;
    this.bottoms = bottoms;
  }

  /** Counts crossings of these; what has no height cannot be crossed. */
  static Crossings of(List<Obstacle> obstacles) {
    List<Obstacle> tall = obstacles.stream().filter(o -> top(o) < bottom(o)).toList();
    return new Crossings(sorted(tall, Crossings::top), sorted(tall, Crossings::bottom));
  }

  /** The first whole pixel of an obstacle. */
  static double top(Obstacle obstacle) {
    return Math.max(0, Math.floor(obstacle.topPx()));
  }

  /** The whole pixel behind the last of an obstacle. */
  static double bottom(Obstacle obstacle) {
    return Math.max(0, Math.ceil(obstacle.bottomPx()));
  }

  private static int[] sorted(List<Obstacle> obstacles, ToDoubleFunction<Obstacle> edge) {
    return obstacles.stream().mapToInt(o -> (int) edge.applyAsDouble(o)).sorted().toArray();
  }

  /** How many obstacles have this height within, not only at an edge. */
  int at(int height) {
    return below(tops, height) - below(bottoms, height + 1);
  }

  /** The heights at which the count may change. */
  IntStream edges() {
    return IntStream.concat(IntStream.of(tops), IntStream.of(bottoms));
  }

  /** How many of some rising numbers are less than a height. */
  private static int below(int[] rising, int height) {
    int low = 0;
    int high = rising.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (rising[middle] < height) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
