package io.github.readfall.script;

import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** Finds the name that was probably meant. */
final class NearestName {

  /** One slip in this many letters still leaves a name recognisable. House default, no source. */
  private static final int LETTERS_PER_SLIP = 4;

  /** Bounds that no list of people comes near, so that nonsense takes no time. */
  private static final int MAX_LENGTH = 100;

  private static final int MAX_NAMES = 500;

  private NearestName() {}

  /**
   * The nearest of the names, in any case, if it is near enough: one slip for each four letters
   * (one for three).
   */
  static Optional<String> of(String name, Collection<String> names) {
    String wanted = Letters.fold(name);
    if (wanted.length() > MAX_LENGTH) {
      return Optional.empty();
    }
    int best = Math.max(wanted.length() >= 3 ? 1 : 0, wanted.length() / LETTERS_PER_SLIP) + 1;
    Optional<String> nearest = Optional.empty();
    List<String> looked = names.stream().limit(MAX_NAMES).toList();
    for (String candidate : looked) {
      String folded = Letters.fold(candidate);
      if (Math.abs(folded.length() - wanted.length()) < best) {
        int slips = slips(wanted, folded);
        if (slips < best) {
          best = slips;
          nearest = Optional.of(candidate);
        }
      }
    }
    return nearest;
  }

  /**
   * Letters put in, left out, changed, or swapped with their neighbour (optimal string alignment;
   * Damerau, Communications of the ACM 7(3), 1964).
   */
  static int slips(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 || j == 0 ? i + j : least(a, b, d, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int least(String a, String b, int[][] d, int i, int j) {
    int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
    int least = Math.min(d[i - 1][j - 1] + change, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(least, d[i - 2][j - 2] + 1) : least;
  }
}
