package io.github.readfall.type.text;

import com.ibm.icu.lang.UCharacter;
import com.ibm.icu.lang.UCharacterCategory;

/**
 * Removes breaks that UAX #14 allows and lettering does not. Common practice, except where the
 * standard for a language agrees: CLREQ forbids a dash or an ellipsis at a line's start at its
 * strict level.
 */
final class BreakFilter {

  private static final int ELLIPSIS = 0x2026;
  private static final int MIDLINE_ELLIPSIS = 0x22EF;

  /**
   * Dandas, the Thai sign that repeats a word and the one that shortens it: they belong to the text
   * before them, even across a space. A danda starts no line (W3C Indic layout requirements); for
   * the Thai signs, common practice. Neither does an interpunct, nor a tilde that draws a sound out
   * (W3C CLREQ and KLREQ).
   */
  private static final String STAYS_BEHIND = "\u0964\u0965\u0E46\u0E2F\u00B7~\uFF5E\uFF0F";

  private static final String SMALL_TSU = "っッ";
  private static final String DOUBLED = "かきくけこさしすせそたちつてとぱぴぷぺぽカキクケコサシスセソタチツテトパピプペポ";

  private static final int LEAST_OF_HYPHENED = 4; // house default, no source

  private BreakFilter() {}

  /**
   * Returns true if a line may end at a place that UAX #14 allows.
   *
   * @param at UTF-16 index of the first unit of the next line; inside the text
   */
  static boolean allows(String text, int at) {
    int next = text.codePointAt(at);
    return !isDash(next)
        && next != ELLIPSIS
        && next != MIDLINE_ELLIPSIS
        && STAYS_BEHIND.indexOf(next) < 0
        && !text.startsWith("..", at)
        && !leavesLoneDash(text, at)
        && !leavesOpeningDash(text, at)
        && !leavesStump(text, at);
  }

  private static boolean isDash(int codePoint) {
    return UCharacter.getType(codePoint) == UCharacterCategory.DASH_PUNCTUATION
        || codePoint == 0x30FC;
  }

  /** {@code — |Yes}: a dialogue dash stays with its words. */
  private static boolean leavesLoneDash(String text, int at) {
    int from = Math.max(text.lastIndexOf('\n', at - 1) + 1, 0);
    boolean dash = false;
    for (int i = from; i < at; i++) {
      char c = text.charAt(i);
      if (isDash(c)) {
        dash = true;
      } else if (!UCharacter.isWhitespace(c)) {
        return false;
      }
    }
    return dash;
  }

  /** {@code ¡Yo! —|dijo}: a dash that opens a word stays with it. */
  private static boolean leavesOpeningDash(String text, int at) {
    return at >= 2 && isDash(text.charAt(at - 1)) && UCharacter.isWhitespace(text.charAt(at - 2));
  }

  /**
   * {@code now-|ish}, {@code w-|wait}: a hyphenated word breaks only if enough of it is on either
   * side; a few letters are read faster than the eye moves to the next line.
   */
  private static boolean leavesStump(String text, int at) {
    if (at < 2 || !isHyphen(text.charAt(at - 1)) || !Character.isLetterOrDigit(text.charAt(at))) {
      return false;
    }
    int before = at - 1;
    while (before > 0 && Character.isLetterOrDigit(text.charAt(before - 1))) {
      before--;
    }
    int after = at;
    while (after < text.length() && Character.isLetterOrDigit(text.charAt(after))) {
      after++;
    }
    boolean hyphened = before < at - 1;
    return hyphened && Math.min(at - 1 - before, after - at) < LEAST_OF_HYPHENED;
  }

  /**
   * {@code 行っ|ちゃった}: what ICU takes for a phrase's end is none if a small tsu doubles the sound
   * that follows.
   */
  static boolean tearsSound(String text, int at) {
    return at > 0
        && at < text.length()
        && SMALL_TSU.indexOf(text.charAt(at - 1)) >= 0
        && DOUBLED.indexOf(text.charAt(at)) >= 0;
  }

  private static boolean isHyphen(char c) {
    return c == '-' || c == '\u2010';
  }
}
