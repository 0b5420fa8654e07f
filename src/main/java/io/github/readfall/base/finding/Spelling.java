package io.github.readfall.base.finding;

/** How far a word is from the one that was probably meant. */
public final class Spelling {

  private Spelling() {}

  /**
   * Letters put in, left out, changed, or swapped with their neighbour (optimal string alignment;
   * Damerau 1964, Communications of the ACM 7(3)). Worked example: {@code widht} is one slip from
   * {@code width}.
   */
  public static int between(String a, String b) {
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
