package io.github.readfall.plan;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** Counts the obstacles that a cut at a height crosses. Heights are whole strip pixels. */
final class Crossings {

  private final int[] tops;
  private final int[] bottoms;

  private Crossings(int[] tops, int[] bottoms) {
    this.tops = tops;
    this.bottoms = bottoms;
  }

  /** A count of these obstacles; one without height cannot be crossed. */
  static Crossings of(List<Obstacle> obstacles) {
    List<Obstacle> tall = obstacles.stream().filter(o -> top(o) < bottom(o)).toList();
    return new Crossings(sorted(tall, Crossings::top), sorted(tall, Crossings::bottom));
  }

  /** The first whole pixel of an obstacle. */
  static double top(Obstacle obstacle) {
    return Math.max(0, Math.floor(obstacle.topPx()));
  }

  /** The whole pixel after the last of an obstacle. */
  static double bottom(Obstacle obstacle) {
    return Math.max(0, Math.ceil(obstacle.bottomPx()));
  }

  private static int[] sorted(List<Obstacle> obstacles, ToDoubleFunction<Obstacle> edge) {
    return obstacles.stream().mapToInt(o -> (int) edge.applyAsDouble(o)).sorted().toArray();
  }

  /**
   * The number of obstacles that each of some heights crosses; a height at an edge crosses nothing.
   *
   * @param heights rising
   */
  int[] at(int[] heights) {
    int[] counts = new int[heights.length];
    int begun = 0;
    int ended = 0;
    for (int i = 0; i < heights.length; i++) {
      while (begun < tops.length && tops[begun] < heights[i]) {
        begun++;
      }
      while (ended < bottoms.length && bottoms[ended] <= heights[i]) {
        ended++;
      }
      counts[i] = begun - ended;
    }
    return counts;
  }

  /** The heights at which the count may change. */
  IntStream edges() {
    return IntStream.concat(IntStream.of(tops), IntStream.of(bottoms));
  }
}
