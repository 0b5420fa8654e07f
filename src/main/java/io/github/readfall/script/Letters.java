package io.github.readfall.script;

import java.util.Locale;

/** Classifies the characters of a script, and compares names. */
public final class Letters {

  private Letters() {}

  /** White space, no-break spaces and invisible format characters: nothing to see. */
  public static boolean isInvisible(int c) {
    return Character.isWhitespace(c)
        || Character.isSpaceChar(c)
        || Character.getType(c) == Character.FORMAT;
  }

  public static boolean isMark(int c) {
    int type = Character.getType(c);
    return type == Character.NON_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || type == Character.COMBINING_SPACING_MARK;
  }

  /** Returns true for a letter or digit of a script with capitals, which markup may not divide. */
  static boolean isCasedOrDigit(int c) {
    int type = Character.getType(c);
    return type == Character.UPPERCASE_LETTER
        || type == Character.LOWERCASE_LETTER
        || type == Character.TITLECASE_LETTER
        || type == Character.DECIMAL_DIGIT_NUMBER;
  }

  /** Han, kana and their punctuation: written without spaces between words. */
  public static boolean isWrittenWithoutSpaces(int c) {
    if ((c >= 0x3000 && c <= 0x303F)
        || (c >= 0xFF01 && c <= 0xFF0F)
        || c == 0xFF1A
        || c == 0xFF1F) {
      return true;
    }
    Character.UnicodeScript script = Character.UnicodeScript.of(c);
    return script == Character.UnicodeScript.HAN
        || script == Character.UnicodeScript.HIRAGANA
        || script == Character.UnicodeScript.KATAKANA
        || c == 0x30FC;
  }

  /** A character that no face can letter: a control, half a pair, or no character at all. */
  public static boolean isUnletterable(int c) {
    int type = Character.getType(c);
    return (type == Character.CONTROL && !Character.isWhitespace(c))
        || type == Character.SURROGATE
        || (c & 0xFFFE) == 0xFFFE
        || (c >= 0xFDD0 && c <= 0xFDEF);
  }

  public static boolean isBlank(String text) {
    return text.codePoints().allMatch(c -> isInvisible(c) || isUnletterable(c));
  }

  /** First index from {@code start} that is visible; {@code end} if none is. */
  public static int skipInvisible(String text, int start, int end) {
    int i = start;
    while (i < end && isInvisible(text.codePointAt(i))) {
      i += Character.charCount(text.codePointAt(i));
    }
    return Math.min(i, end);
  }

  /** First index from {@code start} that is no white space; {@code end} if all are. */
  public static int skipSpaces(String text, int start, int end) {
    int i = start;
    while (i < end && isSpace(text.charAt(i))) {
      i++;
    }
    return i;
  }

  /** Index after the last character that is no white space; {@code start} if there is none. */
  public static int trimEnd(String text, int start, int end) {
    int i = end;
    while (i > start && isSpace(text.charAt(i - 1))) {
      i--;
    }
    return i;
  }

  public static boolean isSpace(int c) {
    return Character.isWhitespace(c) || Character.isSpaceChar(c);
  }

  /** Without format characters (joiners apart), white space at the ends gone and single within. */
  public static String collapse(String text) {
    StringBuilder collapsed = new StringBuilder(text.length());
    boolean gap = false;
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      i += Character.charCount(c);
      if (isSpace(c)) {
        gap = true;
      } else if (Character.getType(c) != Character.FORMAT || isJoiner(c)) {
        if (gap && !collapsed.isEmpty()) {
          collapsed.append(' ');
        }
        gap = false;
        collapsed.appendCodePoint(c);
      }
    }
    return collapsed.toString();
  }

  /**
   * A name as it is compared: joiners, case, kind of apostrophe, the Turkish dot and the Greek
   * accent, which capitals may lack, do not count.
   */
  public static String fold(String name) {
    if (isPlain(name)) {
      return name.toLowerCase(Locale.ROOT);
    }
    String lower = collapse(name).toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
    StringBuilder folded = new StringBuilder(lower.length());
    for (int i = 0; i < lower.length(); i++) {
      char c = lower.charAt(i);
      if (isJoiner(c) || (c == '\u0307' && i > 0 && lower.charAt(i - 1) == 'i')) {
        continue;
      }
      folded.append(plainer(c));
    }
    return folded.toString();
  }

  /** English letters and digits, and single spaces between them: most names are no more. */
  private static boolean isPlain(String name) {
    char before = ' ';
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      boolean letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
      if (!letter && (c != ' ' || before == ' ')) {
        return false;
      }
      before = c;
    }
    return before != ' ';
  }

  /** Shapes the letters beside it, in Persian for one, and so is part of a name. */
  private static boolean isJoiner(int c) {
    return c == 0x200C || c == 0x200D;
  }

  private static char plainer(char c) {
    int greek = "άέήίόύώς".indexOf(c);
    if (greek >= 0) {
      return "αεηιουωσ".charAt(greek);
    }
    return c == '\u2018' || c == '\u2019' || c == '\u02BC' ? '\'' : c;
  }
}
