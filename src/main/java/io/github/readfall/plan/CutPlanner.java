package io.github.readfall.plan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;

/**
 * Chooses where to cut a strip into pieces that are not too tall.
 *
 * <p>It takes the cuts that cross the fewest lines of text, of those the fewest balloons, of those
 * the fewest panels, of those the ones with the fewest pieces: an exact optimum, found by dynamic
 * programming from the top down. Only the edges of obstacles and the heights whole pieces below
 * them need a look, because any cut can be moved down, until it meets such an edge or its piece is
 * full, without crossing more. Of equal choices it takes the one whose cuts are nearest to the
 * middles of gutters (of the spaces between balloons, if they cross panels), as far as those
 * heights and the middles themselves go. It does not try to make pieces even: a short last page
 * costs nothing.
 *
 * <p>Cuts are between whole pixels; obstacles are extended to the next whole pixel outwards. Time
 * grows with the height of the strip, not with the number of obstacles times the pieces.
 */
public final class CutPlanner {

  private static final int SHIFT = 32;

  /** More than any strip, and safe to add to one. */
  private static final int TALLEST = 1 << 30;

  private final int heightPx;
  private final int maxPx;
  private final Crossings letters;
  private final Crossings balloons;
  private final Crossings panels;
  private final Gaps betweenBalloons;
  private final Gaps gutters;

  private CutPlanner(int heightPx, int maxPx, List<Obstacle> obstacles) {
    this.heightPx = heightPx;
    this.maxPx = maxPx;
    List<Obstacle> words = only(Obstacle.Kind.BALLOON, obstacles);
    this.letters = Crossings.of(only(Obstacle.Kind.LETTERS, obstacles));
    this.balloons = Crossings.of(words);
    this.panels = Crossings.of(only(Obstacle.Kind.PANEL, obstacles));
    this.betweenBalloons = Gaps.between(words, heightPx);
    this.gutters = Gaps.between(obstacles, heightPx);
  }

  private static List<Obstacle> only(Obstacle.Kind kind, List<Obstacle> obstacles) {
    return obstacles.stream().filter(obstacle -> obstacle.kind() == kind).toList();
  }

  /**
   * The heights to cut at, from the top, without the strip's two ends.
   *
   * @param heightPx of the strip, taken to the whole pixel; not negative
   * @param maxPx greatest height of a piece; at least 1
   * @param obstacles in any order
   */
  public static List<Double> plan(double heightPx, double maxPx, List<Obstacle> obstacles) {
    if (!(maxPx >= 1)) {
      throw new IllegalArgumentException("no piece is " + maxPx + " px tall");
    }
    int height = (int) Math.rint(heightPx);
    int max = (int) Math.min(TALLEST, Math.floor(maxPx));
    return height <= max ? List.of() : new CutPlanner(height, max, obstacles).best();
  }

  private List<Double> best() {
    int[] heights = candidates();
    int[] lines = letters.at(heights);
    int[] words = balloons.at(heights);
    int[] frames = panels.at(heights);
    int[] offWords = betweenBalloons.offMiddle(heights);
    int[] offFrames = gutters.offMiddle(heights);
    int[] before = new int[heights.length];
    long[] halved = new long[heights.length]; // lines of text
    long[] crossed = new long[heights.length]; // balloons above panels, in one number
    long[] pieces = new long[heights.length];
    int[] window = new int[heights.length]; // the best cut before, then later ones worse
    int first = 0;
    int last = 0;
    for (int i = 1; i < heights.length; i++) {
      while (heights[window[first]] < heights[i] - maxPx) {
        first++;
      }
      int from = window[first];
      before[i] = from;
      boolean end = heights[i] == heightPx;
      int off = frames[i] == 0 ? offFrames[i] : offWords[i];
      halved[i] = halved[from] + (end ? 0 : lines[i]);
      crossed[i] = crossed[from] + (end ? 0 : ((long) words[i] << SHIFT) + frames[i]);
      pieces[i] = pieces[from] + (1L << SHIFT) + (end ? 0 : off);
      while (last >= first && !isBetter(window[last], i, halved, crossed, pieces)) {
        last--;
      }
      window[++last] = i;
    }
    return path(heights, before);
  }

  /**
   * Returns true if the cuts up to one height are better than those up to another.
   *
   * @param costs that count, the weightiest first
   */
  private static boolean isBetter(int one, int other, long[]... costs) {
    for (long[] cost : costs) {
      if (cost[one] != cost[other]) {
        return cost[one] < cost[other];
      }
    }
    return false;
  }

  private static List<Double> path(int[] heights, int[] before) {
    List<Double> cuts = new ArrayList<>();
    for (int i = before[heights.length - 1]; i > 0; i = before[i]) {
      cuts.add((double) heights[i]);
    }
    Collections.reverse(cuts);
    return cuts;
  }

  /** Every height worth trying, rising, from the strip's top to its bottom. */
  private int[] candidates() {
    BitSet heights = new BitSet(heightPx + 1);
    heights.set(0);
    letters.edges().forEach(heights::set);
    balloons.edges().forEach(heights::set);
    panels.edges().forEach(heights::set);
    for (int y = heights.nextSetBit(0); y >= 0 && y < heightPx - maxPx; ) {
      heights.set(y + maxPx); // a full piece below
      y = heights.nextSetBit(y + 1);
    }
    gutters.middles().forEach(heights::set);
    betweenBalloons.middles().forEach(heights::set);
    heights.set(heightPx);
    heights.clear(heightPx + 1, Math.max(heightPx + 1, heights.length()));
    return heights.stream().toArray();
  }
}
