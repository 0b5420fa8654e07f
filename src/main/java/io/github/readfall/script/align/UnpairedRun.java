package io.github.readfall.script.align;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * The elements between two neighbouring pairs of an alignment.
 *
 * @param oldFrom first old element in it
 * @param oldEnd the one after its last
 * @param nowFrom first new element in it
 * @param nowEnd the one after its last
 */
public record UnpairedRun(int oldFrom, int oldEnd, int nowFrom, int nowEnd) {

  /** The gaps of an alignment that have both old and new elements. */
  public static List<UnpairedRun> between(int[] pairs, int nows) {
    List<UnpairedRun> gaps = new ArrayList<>();
    int oldFrom = 0;
    int nowFrom = 0;
    for (int i = 0; i <= pairs.length; i++) {
      int now = i == pairs.length ? nows : pairs[i];
      if (now != SequenceAlignment.NONE) {
        if (i > oldFrom && now > nowFrom) {
          gaps.add(new UnpairedRun(oldFrom, i, nowFrom, now));
        }
        oldFrom = i + 1;
        nowFrom = now + 1;
      }
    }
    return gaps;
  }

  /** The old elements in it that are wanted. */
  public List<Integer> olds(IntPredicate wanted) {
    return IntStream.range(oldFrom, oldEnd).filter(wanted).boxed().toList();
  }

  /** The new elements in it that are wanted. */
  public List<Integer> nows(IntPredicate wanted) {
    return IntStream.range(nowFrom, nowEnd).filter(wanted).boxed().toList();
  }
}
