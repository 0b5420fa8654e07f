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
   * The heading of a text. The label is its first word if that has a digit or is a few capitals
   * that are no shot size, or else everything before a colon.
   */
  public static PanelHeading of(String written) {
    String rest = withoutSigns(written);
    int wordEnd = wordEnd(rest);
    String word = rest.substring(0, wordEnd);
    if (isLabel(word)) {
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
    return number ? Integer.parseInt(label) : -1;
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
