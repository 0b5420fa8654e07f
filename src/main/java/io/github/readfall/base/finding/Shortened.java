package io.github.readfall.base.finding;

/** Shortens a person's text for a sentence or a column. */
public final class Shortened {

  private Shortened() {}

  /**
   * A text of at most so many letters.
   *
   * @param most in code points, with the sign for what is left out; at least 1
   */
  public static String to(int most, String written) {
    return written.codePointCount(0, written.length()) <= most
        ? written
        : written.substring(0, written.offsetByCodePoints(0, most - 1)) + "…";
  }
}
