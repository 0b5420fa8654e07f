package io.github.readfall.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The gaps between obstacles, and how near to the middle of one a cut is. */
final class Gaps {

  /** Distance from the middle of a cut at the edge of a gap, or in none. */
  private static final int AT_EDGE = 1000;

  private final List<Gap> gaps;

  /** A free length, from one whole pixel to another below it. */
  private record Gap(int start, int end) {
    int offMiddle(int height) {
      if (height < start || height > end) {
        return AT_EDGE;
      }
      long twice = Math.abs(2L * height - start - end);
      return (int) (AT_EDGE * twice / (end - start));
    }
  }

  private Gaps(List<Gap> gaps) {
    this.gaps = List.copyOf(gaps);
  }

  /** The gaps between obstacles, above them all and below them all. */
  static Gaps between(List<Obstacle> obstacles, int heightPx) {
    List<Gap> gaps = new ArrayList<>();
    int free = 0;
    for (Obstacle obstacle :
        obstacles.stream().sorted(Comparator.comparingDouble(Obstacle::topPx)).toList()) {
      int top = (int) Crossings.top(obstacle);
      if (top > free && free < heightPx) {
        gaps.add(new Gap(free, Math.min(top, heightPx)));
      }
      free = Math.max(free, (int) Crossings.bottom(obstacle));
    }
    if (free < heightPx) {
      gaps.add(new Gap(free, heightPx));
    }
    return new Gaps(gaps);
  }

  IntStream middles() {
    return gaps.stream().mapToInt(gap -> (gap.start() + gap.end()) / 2);
  }

  /**
   * For each height, 0 in the middle of a gap, {@value #AT_EDGE} at its edge or in none.
   *
   * @param heights rising
   */
  int[] offMiddle(int[] heights) {
    int[] off = new int[heights.length];
    int gap = 0;
    for (int i = 0; i < heights.length; i++) {
      while (gap + 1 < gaps.size() && gaps.get(gap + 1).start() <= heights[i]) {
        gap++;
      }
      off[i] = gaps.isEmpty() ? AT_EDGE : gaps.get(gap).offMiddle(heights[i]);
    }
    return off;
  }
}
