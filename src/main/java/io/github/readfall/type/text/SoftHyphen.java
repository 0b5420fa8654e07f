package io.github.readfall.type.text;

/**
 * Handles U+00AD, with which a writer allows a word to be divided: a hyphen if a line ends with it,
 * nothing elsewhere (UAX #14, class BA, "soft hyphen").
 */
final class SoftHyphen {

  private static final char SOFT = '\u00AD';
  private static final String SHOWN = "-";

  private SoftHyphen() {}

  static boolean isIn(String text) {
    return text.indexOf(SOFT) >= 0;
  }

  /**
   * A part of a text as it is seen.
   *
   * @param start of the part
   * @param end one past the part
   * @param lineEnd end of its line
   */
  static String shown(String text, int start, int end, int lineEnd) {
    String part = text.substring(start, end);
    if (!isIn(part)) {
      return part;
    }
    boolean breaks = end == lineEnd && text.charAt(end - 1) == SOFT && end < text.length();
    return part.replace(String.valueOf(SOFT), "") + (breaks ? SHOWN : "");
  }
}
