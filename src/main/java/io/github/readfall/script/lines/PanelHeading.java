package io.github.readfall.script.lines;

import io.github.readfall.script.Brackets;
import io.github.readfall.script.CommaList;
import io.github.readfall.script.Letters;
import io.github.readfall.script.ShotHints;

/**
 * The text after PANEL.
 *
 * @param label number or name; empty if none
 * @param heading shot size, hints and everything else
 */
public record PanelHeading(String label, String heading) {

  private static final int MAX_INITIALS = 4;
  private static final int MAX_DIGITS = 9;

  /**
   * The heading of a text. The label is its first word if that has a digit, is a few capitals that
   * are no shot size or a number in words, or else everything before a colon.
   */
  public static PanelHeading of(String written) {
    String rest = withoutSigns(written);
    int wordEnd = wordEnd(rest);
    String word = rest.substring(0, wordEnd);
    if (isLabel(word) || (NumberWords.value(word) > 0 && isByItself(rest, wordEnd))) {
      return new PanelHeading(word, withoutSigns(rest.substring(wordEnd)));
    }
    int colon = rest.indexOf(':');
    if (colon > 0 && colon <= CueHeadReader.MAX_NAME && rest.indexOf(',') < 0) {
      String name = Letters.collapse(rest.substring(0, colon));
      return new PanelHeading(name, withoutSigns(rest.substring(colon + 1)));
    }
    return new PanelHeading("", rest);
  }

  /** The label as a number; -1 where it is none. */
  public int number() {
    boolean number =
        !label.isEmpty()
            && label.length() <= MAX_DIGITS
            && label.codePoints().allMatch(Character::isDigit);
    return number ? Integer.parseInt(label) : NumberWords.value(label);
  }

  /**
   * Returns true if a text can be nothing but what follows a panel's or scene's keyword: a number
   * or letter with nothing, a sign, a gap or a hint after it.
   */
  static boolean isNumbered(String written) {
    String rest = written.strip();
    rest = rest.startsWith("#") ? rest.substring(1) : rest;
    int end = wordEnd(rest);
    String word = rest.substring(0, end);
    boolean letter = word.length() == 1 && Character.isUpperCase(word.charAt(0));
    boolean number =
        NumberWords.value(word) > 0 || (end > 0 && Character.isDigit(word.charAt(0)) && end <= 4);
    return (number || letter) && isByItself(rest, end);
  }

  /** Returns true if no sentence goes on after a word. */
  private static boolean isByItself(String text, int wordEnd) {
    String after = text.substring(wordEnd);
    int next = Letters.skipSpaces(after, 0, after.length());
    if (next == after.length() || next > 1 || after.charAt(0) == '\t') {
      return true;
    }
    ShotHints hints = ShotHints.of(withoutSigns(after));
    return ":\uFF1A.-\u2013\u2014(\uFF08".indexOf(after.charAt(next)) >= 0
        || hints.shot().isPresent()
        || hints.tall()
        || hints.wide()
        || hints.inset();
  }

  private static boolean isLabel(String word) {
    boolean digit = word.codePoints().anyMatch(Character::isDigit);
    boolean initials = Speakers.isCapitals(word) && word.length() <= MAX_INITIALS;
    return digit || (initials && !ShotHints.isShotWord(word));
  }

  private static int wordEnd(String text) {
    int end = 0;
    while (end < text.length() && !isSign(text.charAt(end))) {
      end++;
    }
    return Letters.trimEnd(text, 0, hyphensTrimmed(text, end));
  }

  private static int hyphensTrimmed(String text, int end) {
    int i = end;
    while (i > 0 && (text.charAt(i - 1) == '-' || text.charAt(i - 1) == '.')) {
      i--;
    }
    return i;
  }

  private static boolean isSign(char c) {
    return Letters.isSpace(c) || Brackets.isColon(c) || CommaList.isComma(c) || Brackets.opens(c);
  }

  /** Without the colon, dash or point that people put between keyword, label and heading. */
  public static String withoutSigns(String text) {
    int i = 0;
    while (i < text.length()
        && (Letters.isInvisible(text.charAt(i))
            || ":\uFF1A.,\uFF0C-\u2013\u2014#".indexOf(text.charAt(i)) >= 0)) {
      i++;
    }
    return text.substring(i).strip();
  }
}
