package io.github.readfall.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** The heights between obstacles, and how near to the middle of one a cut lies. */
final class Gaps {

  /** What a cut at the edge of a gap, or in none, is off the middle. */
  private static final int AT_EDGE = 1000;

  private final NavigableMap<Integer, Integer> endByStart;

  private Gaps(NavigableMap<Integer, Integer> endByStart) {
    this.endByStart = endByStart;
  }

  /** The gaps between obstacles, and above and below them all. */
  static Gaps between(List<Obstacle> obstacles, int heightPx) {
    NavigableMap<Integer, Integer> gaps = new TreeMap<>();
    int free = 0;
    for (Obstacle obstacle :
        obstacles.stream().sorted(Comparator.comparingDouble(Obstacle::topPx)).toList()) {
      int top = (int) Crossings.top(obstacle);
      if (top > free && free < heightPx) {
        gaps.put(free, Math.min(top, heightPx));
      }
      free = Math.max(free, (int) Crossings.bottom(obstacle));
    }
    if (free < heightPx) {
      gaps.put(free, heightPx);
    }
    return new Gaps(gaps);
  }

  IntStream middles() {
    return endByStart.entrySet().stream().mapToInt(gap -> (gap.getKey() + gap.getValue()) / 2);
  }

  /** 0 in the middle of a gap, {@value #AT_EDGE} at its edge or in none. */
  int offMiddle(int height) {
    Map.Entry<Integer, Integer> gap = endByStart.floorEntry(height);
    if (gap == null || height > gap.getValue()) {
      return AT_EDGE;
    }
    long twice = Math.abs(2L * height - gap.getKey() - gap.getValue());
    return (int) (AT_EDGE * twice / (gap.getValue() - gap.getKey()));
  }
}
