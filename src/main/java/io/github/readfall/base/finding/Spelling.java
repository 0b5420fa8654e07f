package io.github.readfall.base.finding;

import java.util.Collection;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.function.UnaryOperator;

/** Compares words letter by letter, to find the one that a mistyped word was meant to be. */
public final class Spelling {

  /** Longest word that is compared with a list: a longer one is no typo, and would take time. */
  private static final int MAX_LETTERS = 100;

  /** Names compared with one word; no cast is that long, so nonsense takes no time. */
  private static final int MAX_NAMES = 500;

  /** Letters of a name per typo that leave it recognisable. House default, no source. */
  private static final int NAME_LETTERS_PER_TYPO = 4;

  /** Shortest name that may have a typo. House default, no source. */
  private static final int SHORTEST_NAME = 3;

  /** Longest mistyped keyword. House default, no source. */
  private static final int MAX_KEYWORD_LETTERS = 60;

  /** Letters of a keyword per typo that leave it recognisable. House default, no source. */
  private static final int KEYWORD_LETTERS_PER_TYPO = 3;

  /**
   * Differing letters that {@link #likeness} compares; further ones count as equal. House default,
   * no source.
   */
  private static final int MAX_DIFFERING = 200;

  private Spelling() {}

  /**
   * Returns the number of typos between two words: letters inserted, left out, changed, or swapped
   * with their neighbour (optimal string alignment; Damerau 1964, Communications of the ACM 7(3)).
   * Example: {@code widht} is one typo from {@code width}.
   */
  public static int typos(String a, String b) {
    int start = commonStart(a, b);
    int end = commonEnd(a, b, start);
    return distance(a.substring(start, a.length() - end), b.substring(start, b.length() - end));
  }

  /**
   * Finds the name that was probably meant, allowing one typo for every four letters of the name
   * (one for three letters).
   *
   * @param names candidates, of which the first 500 are compared
   * @param fold maps a name to the form in which names are compared
   * @return the first of the nearest names; empty if none is near enough
   */
  public static Optional<String> nearestName(
      String name, Collection<String> names, UnaryOperator<String> fold) {
    String wanted = fold.apply(name);
    if (wanted.length() > MAX_LETTERS) {
      return Optional.empty();
    }
    int allowed =
        Math.max(wanted.length() >= SHORTEST_NAME ? 1 : 0, wanted.length() / NAME_LETTERS_PER_TYPO);
    return nearest(wanted, names, fold, candidate -> allowed);
  }

  /**
   * Finds the keyword that was probably meant, allowing a typo for every third letter of the
   * keyword, and at least one. Example: {@code widht} gives {@code width}.
   *
   * @return the first of the nearest keywords; empty if none is near enough
   */
  public static Optional<String> nearestKeyword(String typed, Collection<String> keywords) {
    if (typed.length() > MAX_KEYWORD_LETTERS) {
      return Optional.empty();
    }
    return nearest(
        typed,
        keywords,
        UnaryOperator.identity(),
        keyword -> Math.max(1, keyword.length() / KEYWORD_LETTERS_PER_TYPO));
  }

  private static Optional<String> nearest(
      String wanted,
      Collection<String> candidates,
      UnaryOperator<String> fold,
      ToIntFunction<String> allowed) {
    int best = Integer.MAX_VALUE;
    Optional<String> nearest = Optional.empty();
    int left = MAX_NAMES;
    for (String candidate : candidates) {
      if (left-- == 0 || best == 0) {
        break;
      }
      String folded = fold.apply(candidate);
      int most = Math.min(allowed.applyAsInt(folded), best - 1);
      if (Math.abs(folded.length() - wanted.length()) <= most) {
        int typos = typos(wanted, folded);
        if (typos <= most) {
          best = typos;
          nearest = Optional.of(candidate);
        }
      }
    }
    return nearest;
  }

  /**
   * Returns how alike two texts are, from 0 to 1: one less the typos over the letters of the longer
   * text. Example: {@code wheel} and {@code wheat} differ in two letters of five, so they are 0.6
   * alike.
   *
   * @param least lower results may be returned as 0, which is quicker
   */
  public static double likeness(String a, String b, double least) {
    if (a.equals(b)) {
      return 1;
    }
    int longer = Math.max(a.length(), b.length());
    if (1 - Math.abs(a.length() - b.length()) / (double) longer < least) {
      return 0;
    }
    int start = commonStart(a, b);
    int end = commonEnd(a, b, start);
    String restOfA = a.substring(start, Math.min(a.length() - end, start + MAX_DIFFERING));
    String restOfB = b.substring(start, Math.min(b.length() - end, start + MAX_DIFFERING));
    return 1 - distance(restOfA, restOfB) / (double) longer;
  }

  private static int commonStart(String a, String b) {
    int shorter = Math.min(a.length(), b.length());
    int start = 0;
    while (start < shorter && a.charAt(start) == b.charAt(start)) {
      start++;
    }
    return start;
  }

  private static int commonEnd(String a, String b, int start) {
    int shorter = Math.min(a.length(), b.length());
    int end = 0;
    while (end < shorter - start
        && a.charAt(a.length() - end - 1) == b.charAt(b.length() - end - 1)) {
      end++;
    }
    return end;
  }

  private static int distance(String a, String b) {
    int[] beforeLast = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] oldest = beforeLast;
      beforeLast = last;
      last = row;
      row = oldest;
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int changed = last[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(changed, Math.min(last[j], row[j - 1]) + 1);
        if (isSwap(a, b, i, j)) {
          row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
        }
      }
    }
    return row[b.length()];
  }

  private static boolean isSwap(String a, String b, int i, int j) {
    return i > 1
        && j > 1
        && a.charAt(i - 1) == b.charAt(j - 2)
        && a.charAt(i - 2) == b.charAt(j - 1);
  }
}
