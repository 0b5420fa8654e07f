package io.github.readfall.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A stretch of scroll, some screens long, and the words on it.
 *
 * @param met the words on it, from the top; at least one
 * @param words their count
 */
public record ScrollStretch(List<ReadWords> met, int words) {

  public ScrollStretch {
    met = List.copyOf(met);
  }

  /**
   * The wordiest stretches of a length: of those that share words only the wordiest, the upper of
   * equals, and none within the limit.
   *
   * @param lengthPx of a stretch, in strip pixels; positive
   * @param limit a stretch with no more words than this is left out
   */
  public static List<ScrollStretch> over(double limit, double lengthPx, List<ReadWords> words) {
    List<ReadWords> sorted =
        words.stream().sorted(Comparator.comparingDouble(ReadWords::middlePx)).toList();
    List<ScrollStretch> found = new ArrayList<>();
    int end = 0;
    int sum = 0;
    int reach = 0;
    for (int start = 0; start < sorted.size(); start++) {
      double bottom = sorted.get(start).middlePx() + lengthPx;
      while (end < sorted.size() && sorted.get(end).middlePx() < bottom) {
        sum += sorted.get(end++).words();
      }
      if (sum > limit) {
        ScrollStretch stretch = new ScrollStretch(sorted.subList(start, end), sum);
        int last = found.size() - 1;
        if (start >= reach) {
          found.add(stretch);
        } else if (sum > found.get(last).words()) {
          found.set(last, stretch);
        }
        reach = end;
      }
      sum -= sorted.get(start).words();
    }
    return found;
  }
}
