package io.github.readfall.type.text;

import java.util.Arrays;

/**
 * What the breaks of a text cost, in shares of the balloon's area: the share by which it may be
 * larger to avoid them. A negative cost is a reward. The costs of a breaking are those of its
 * breaks, its lines and its shape, added.
 *
 * <p>A value by agreement: its arrays are never written to. They are arrays because a fit examines
 * many breakings.
 */
public final class BreakCosts {

  /** A break that costs as much as this parts what no line may part. */
  public static final double NEAR_BAN = 0.6;

  // House defaults, no source; that letterers avoid such lines is common practice.
  private static final double STRANDED = 0.08;
  private static final double LONE_FIRST = 0.04;
  private static final double LONE_LAST = 0.06;
  private static final double ONE_WORD_LINES = 0.12;
  private static final double WIDTH = 0.05;

  /** Words of a sentence that begin it at a line's end look lost up to this number. */
  private static final int STRANDED_WORDS = 2;

  /** A word is alone beside lines of as many words as this. */
  private static final int MANY_WORDS = 3;

  /**
   * Reading slows down below 13 characters a line (Atilgan, Xiong, Legge 2020); 25 is the BBC's
   * limit for upright video (Subtitle Guidelines, 3.3). Both for texts of more than 40.
   */
  private static final double LEAST_CELLS = 13;

  private static final double MOST_CELLS = 25;
  private static final double LONG_TEXT_CELLS = 40;

  private final double[] after;
  private final boolean[] endsSentence;
  private final int[] sentenceStarts;
  private final int[] wordsBefore;
  private final double[] cellsBefore;

  /**
   * The costs of a text's breaks.
   *
   * @param after cost of ending a line after each segment; the last is not looked at
   * @param endsSentence true for segments that end a sentence
   * @param words number of words of each segment; 0 if the script does not part words
   * @param cells width of each segment in character cells, its trailing space included
   */
  BreakCosts(double[] after, boolean[] endsSentence, int[] words, double[] cells) {
    int n = after.length;
    this.after = after;
    this.endsSentence = endsSentence;
    this.sentenceStarts = new int[n];
    this.wordsBefore = new int[n + 1];
    this.cellsBefore = new double[n + 1];
    for (int i = 0; i < n; i++) {
      sentenceStarts[i] = i > 0 && !endsSentence[i - 1] ? sentenceStarts[i - 1] : i;
      wordsBefore[i + 1] = wordsBefore[i] + words[i];
      cellsBefore[i + 1] = cellsBefore[i] + cells[i];
    }
  }

  /** Costs of breaks alone: no line costs anything. */
  static BreakCosts of(double... after) {
    int n = after.length;
    return new BreakCosts(after, new boolean[n], new int[n], new double[n]);
  }

  /** Those of the first so many segments. */
  BreakCosts first(int segments) {
    int[] words = new int[segments];
    double[] cells = new double[segments];
    for (int i = 0; i < segments; i++) {
      words[i] = wordsBefore[i + 1] - wordsBefore[i];
      cells[i] = cellsBefore[i + 1] - cellsBefore[i];
    }
    return new BreakCosts(
        Arrays.copyOf(after, segments), Arrays.copyOf(endsSentence, segments), words, cells);
  }

  /** The cost of ending a line after a segment; negative is a reward. */
  public double after(int segment) {
    return after[segment];
  }

  /**
   * The cost of a line as one of several; not negative: the first words of a sentence stranded at
   * its end cost.
   */
  public double ofLine(int first, int last) {
    int start = sentenceStarts[last];
    boolean strands =
        start > first
            && last + 1 < after.length
            && !endsSentence[last]
            && wordsOf(start, last) <= STRANDED_WORDS;
    return strands ? STRANDED : 0;
  }

  private int wordsOf(int first, int last) {
    return wordsBefore[last + 1] - wordsBefore[first];
  }

  /**
   * The cost of the shape of a breaking; not negative.
   *
   * @param ends the last segment of each line
   * @param count number of lines
   */
  public double ofShape(int[] ends, int count) {
    if (count < 2) {
      return 0;
    }
    int most = 0;
    double widest = 0;
    for (int line = 0; line < count; line++) {
      int first = line == 0 ? 0 : ends[line - 1] + 1;
      most = Math.max(most, wordsOf(first, ends[line]));
      widest = Math.max(widest, cellsBefore[ends[line] + 1] - cellsBefore[first]);
    }
    boolean many = most >= MANY_WORDS;
    double cost = most == 1 && count >= MANY_WORDS ? ONE_WORD_LINES : 0;
    cost += many && isAlone(0, ends[0]) ? LONE_FIRST : 0;
    cost += many && isAlone(ends[count - 2] + 1, ends[count - 1]) ? LONE_LAST : 0;
    boolean isLong = cellsBefore[ends[count - 1] + 1] > LONG_TEXT_CELLS;
    return cost + (isLong && (widest < LEAST_CELLS || widest > MOST_CELLS) ? WIDTH : 0);
  }

  /** Returns true if a line is one word, and not a sentence of its own. */
  private boolean isAlone(int first, int last) {
    boolean isSentence = sentenceStarts[last] == first && (endsSentence[last] || first > 0);
    return wordsOf(first, last) == 1 && !isSentence;
  }
}
