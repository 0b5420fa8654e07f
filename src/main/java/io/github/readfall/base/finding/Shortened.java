package io.github.readfall.base.finding;

/** What a person wrote, short enough to stand in a sentence or a column. */
public final class Shortened {

  private Shortened() {}

  /**
   * A text of so many letters at most.
   *
   * @param most in code points, the sign for what is left out included; at least 1
   */
  public static String to(int most, String written) {
    return written.codePointCount(0, written.length()) <= most
        ? written
        : written.substring(0, written.offsetByCodePoints(0, most - 1)) + "…";
  }
}
