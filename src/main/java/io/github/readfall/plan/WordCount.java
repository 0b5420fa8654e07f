package io.github.readfall.plan;

import io.github.readfall.script.CueText;
import java.lang.Character.UnicodeScript;

/**
 * Counts the words of a cue as a reader sees them, in any script.
 *
 * <p>Words are separated by white space. In scripts without spaces they are estimated from letters,
 * two to a word in Chinese and Japanese and four in Thai, Lao, Khmer and Burmese, combining marks
 * not counted. House default, no source; for Chinese and Japanese it is near the 1.6 and 1.85 that
 * follow from the speeds in words and in characters of Trauzettel-Klosinski and Dietz 2012
 * (Investigative Ophthalmology and Visual Science 53(9)).
 */
public final class WordCount {

  private static final int LETTERS_PER_EAST_ASIAN_WORD = 2;
  private static final int LETTERS_PER_SOUTH_EAST_ASIAN_WORD = 4;

  private WordCount() {}

  /** The words of a text, in any script. */
  public static int of(CueText text) {
    long eastAsian = text.plain().codePoints().filter(WordCount::isEastAsian).count();
    long southEastAsian = text.plain().codePoints().filter(WordCount::isSouthEastAsian).count();
    if (eastAsian + southEastAsian == 0) {
      return text.words();
    }
    double reckoned =
        (double) eastAsian / LETTERS_PER_EAST_ASIAN_WORD
            + (double) southEastAsian / LETTERS_PER_SOUTH_EAST_ASIAN_WORD;
    return (int) Math.ceil(reckoned) + spacedWords(text.plain());
  }

  /** Words of a script with spaces inside a text of one without. */
  private static int spacedWords(String plain) {
    int words = 0;
    boolean inWord = false;
    for (int c : plain.codePoints().toArray()) {
      boolean letter = Character.isLetterOrDigit(c) && !isWithoutSpaces(c);
      words += letter && !inWord ? 1 : 0;
      inWord = letter;
    }
    return words;
  }

  private static boolean isWithoutSpaces(int c) {
    return isEastAsian(c) || isSouthEastAsian(c);
  }

  private static boolean isEastAsian(int c) {
    UnicodeScript script = UnicodeScript.of(c);
    return script == UnicodeScript.HAN
        || script == UnicodeScript.HIRAGANA
        || script == UnicodeScript.KATAKANA
        || c == 'ー'; // lengthens a vowel of kana
  }

  private static boolean isSouthEastAsian(int c) {
    if (!Character.isLetter(c)) {
      return false;
    }
    return switch (UnicodeScript.of(c)) {
      case THAI, LAO, KHMER, MYANMAR -> true;
      default -> false;
    };
  }
}
