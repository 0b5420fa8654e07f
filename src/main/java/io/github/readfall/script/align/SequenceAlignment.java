package io.github.readfall.script.align;

import java.util.Arrays;

/**
 * Pairs two sequences without crossing, so that the sum of the pairs' scores is greatest: the
 * alignment of Needleman and Wunsch (1970, Journal of Molecular Biology 48(3)) with gaps that cost
 * nothing. With a score of 1 for what is equal it finds a longest common subsequence.
 */
public final class SequenceAlignment {

  /** The partner of an element without one. */
  public static final int NONE = -1;

  /** Room for 1500 balloons; of more, those at the end get no partner. House default, no source. */
  private static final int MOST_CELLS = 6_000_000;

  /** The score of a pair; 0 or less if the two may not be paired. */
  public interface Score {
    public double of(int old, int now);
  }

  /** Returns true if no pair could match better. */
  public interface Same {
    boolean are(int old, int now);
  }

  private SequenceAlignment() {}

  /** The pairs of sequences that have nothing in common for certain. */
  public static int[] pairs(int olds, int nows, Score score) {
    return pairs(olds, nows, (i, j) -> false, score);
  }

  /**
   * The index of the new element for each old one, or {@link #NONE}. Of several pairings with the
   * greatest sum, the one that pairs earlier elements.
   *
   * @param same true if two elements have the greatest score there is, tie breakers left out: such
   *     pairs at either end are paired at once, which never lessens the sum
   */
  public static int[] pairs(int olds, int nows, Same same, Score score) {
    int[] pairs = new int[olds];
    Arrays.fill(pairs, NONE);
    int shorter = Math.min(olds, nows);
    int head = 0;
    while (head < shorter && same.are(head, head)) {
      pairs[head] = head++;
    }
    int tail = 0;
    while (tail < shorter - head && same.are(olds - tail - 1, nows - tail - 1)) {
      tail++;
      pairs[olds - tail] = nows - tail;
    }
    pairMiddle(pairs, head, olds - tail, nows - tail, score);
    return pairs;
  }

  private static void pairMiddle(int[] pairs, int from, int oldEnd, int nowEnd, Score score) {
    int nows = nowEnd - from;
    int olds = Math.min(oldEnd - from, MOST_CELLS / Math.max(1, nows));
    if (olds <= 0 || nows <= 0) {
      return;
    }
    double[][] best = bestSums(olds, nows, from, score);
    int i = 0;
    int j = 0;
    while (i < olds && j < nows) {
      double together = score.of(from + i, from + j);
      if (together > 0 && best[i][j] == together + best[i + 1][j + 1]) {
        pairs[from + i++] = from + j++;
      } else if (best[i][j] == best[i + 1][j]) {
        i++;
      } else {
        j++;
      }
    }
  }

  /** The greatest sum from each old and each new element on. */
  private static double[][] bestSums(int olds, int nows, int from, Score score) {
    double[][] best = new double[olds + 1][nows + 1];
    for (int i = olds - 1; i >= 0; i--) {
      for (int j = nows - 1; j >= 0; j--) {
        double unpaired = Math.max(best[i + 1][j], best[i][j + 1]);
        double together = score.of(from + i, from + j);
        best[i][j] = together > 0 ? Math.max(unpaired, together + best[i + 1][j + 1]) : unpaired;
      }
    }
    return best;
  }
}
