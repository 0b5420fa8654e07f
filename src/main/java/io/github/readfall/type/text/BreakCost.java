package io.github.readfall.type.text;

import java.util.List;
import java.util.Locale;

/**
 * The cost of a break: the share by which a balloon may be larger to avoid it. Values are house
 * defaults, no source; that such breaks are avoided is common practice.
 *
 * <p>They only choose among breaks whose balloon is no larger than that of evenly balanced lines,
 * so a cost never makes a balloon large.
 */
public final class BreakCost {

  /** A break inside a phrase, if the language has phrases: it parts what is read as one. */
  public static final double INSIDE_PHRASE = 0.05;

  /** A last line of one word of up to {@link #SHORT_LETTERS} letters: it looks lost. */
  public static final double SHORT_LAST_WORD = 0.04;

  /** A break after an article: the eye waits for its noun. */
  public static final double AFTER_ARTICLE = 0.03;

  /** A break before a particle of the word before: the sense changes on the next line. */
  public static final double BEFORE_PARTICLE = 0.02;

  /** A last line of one longer word. */
  public static final double LONE_LAST_WORD = 0.015;

  static final int SHORT_LETTERS = 3;

  private BreakCost() {}

  /** The cost of ending a line after each segment; 0 after the last. */
  static double[] after(String text, List<LineBreaks.Segment> segments, Language language) {
    double[] costs = new double[segments.size()];
    for (int i = 0; i + 1 < costs.length; i++) {
      LineBreaks.Segment segment = segments.get(i);
      if (!segment.forced()) {
        costs[i] = between(word(text, segment), word(text, segments.get(i + 1)), language);
        costs[i] += segment.discouraged() ? INSIDE_PHRASE : 0;
      }
    }
    return costs;
  }

  private static double between(String word, String next, Language language) {
    double cost = language.smallWords().articles().contains(word) ? AFTER_ARTICLE : 0;
    return cost + (language.smallWords().particles().contains(next) ? BEFORE_PARTICLE : 0);
  }

  /** The cost of a last line that is this segment alone. */
  static double aloneAtEnd(String text, LineBreaks.Segment last) {
    long letters = word(text, last).codePoints().count();
    return letters <= SHORT_LETTERS ? SHORT_LAST_WORD : LONE_LAST_WORD;
  }

  private static String word(String text, LineBreaks.Segment segment) {
    int from = segment.start();
    int to = segment.end();
    while (from < to && !Character.isLetterOrDigit(text.charAt(from))) {
      from++;
    }
    while (to > from && !Character.isLetterOrDigit(text.charAt(to - 1))) {
      to--;
    }
    return text.substring(from, to).toLowerCase(Locale.ROOT);
  }
}
