package io.github.readfall.style;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** The known word that a mistyped one was most likely meant to be. */
final class Nearest {

  private static final int LONGEST = 60; // a longer word is no slip of the finger

  private Nearest() {}

  /**
   * The known word with the fewest letters to change, if a third of them or fewer need changing.
   *
   * <p>Changes are letters put in, left out, replaced or swapped with their neighbour (Damerau
   * 1964, Communications of the ACM 7(3)). Worked example: {@code widht} is one swap from {@code
   * width}, whose five letters allow for one change.
   */
  static Optional<String> to(String typed, Collection<String> known) {
    if (typed.length() > LONGEST) {
      return Optional.empty();
    }
    return known.stream()
        .filter(word -> distance(typed, word) <= Math.max(1, word.length() / 3))
        .min(Comparator.comparingInt(word -> distance(typed, word)));
  }

  /** Letters put in, left out, replaced or swapped with their neighbour. */
  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 || j == 0 ? i + j : cheapest(d, a, b, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int cheapest(int[][] d, String a, String b, int i, int j) {
    int replaced = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
    int best = Math.min(replaced, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(best, 1 + d[i - 2][j - 2]) : best;
  }
}
