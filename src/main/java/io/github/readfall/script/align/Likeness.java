package io.github.readfall.script.align;

/** How alike two texts are. */
public final class Likeness {

  /**
   * Letters that are compared; what follows them is taken to be alike. House default, no source.
   */
  private static final int MOST_LETTERS = 200;

  private Likeness() {}

  /**
   * 1 less the letters to put in, leave out or change (Levenshtein 1966, Soviet Physics Doklady
   * 10(8)) over the letters of the longer: from 0 to 1. Worked example: {@code wheel} and {@code
   * wheat} differ in two letters of five, so they are 0.6 alike.
   *
   * @param least what is less alike than this may count as 0
   */
  public static double of(String a, String b, double least) {
    if (a.equals(b)) {
      return 1;
    }
    int longer = Math.max(a.length(), b.length());
    if (1 - Math.abs(a.length() - b.length()) / (double) longer < least) {
      return 0;
    }
    int start = 0;
    int shorter = Math.min(a.length(), b.length());
    while (start < shorter && a.charAt(start) == b.charAt(start)) {
      start++;
    }
    int end = 0;
    while (end < shorter - start
        && a.charAt(a.length() - end - 1) == b.charAt(b.length() - end - 1)) {
      end++;
    }
    String restOfA = a.substring(start, a.length() - end);
    String restOfB = b.substring(start, b.length() - end);
    return 1 - Math.min(longer, changes(cut(restOfA), cut(restOfB))) / (double) longer;
  }

  private static String cut(String text) {
    return text.length() <= MOST_LETTERS ? text : text.substring(0, MOST_LETTERS);
  }

  private static int changes(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int changed = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(changed, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[b.length()];
  }
}
