package io.github.readfall.type.text;

import com.ibm.icu.lang.UCharacter;
import com.ibm.icu.lang.UProperty;
import com.ibm.icu.text.UnicodeSet;
import com.ibm.icu.util.LocaleData;
import com.ibm.icu.util.ULocale;
import io.github.readfall.type.font.Face;
import java.util.List;

/**
 * Tells which letters a face has: of a text, and of a whole language.
 *
 * <p>A language's letters are CLDR's main and punctuation exemplars and its digits, with their
 * capitals added by rule (Unicode LDML part 2, "Character Elements"). That is a fair start, not a
 * complete set.
 */
public final class Coverage {

  private Coverage() {}

  /** Returns true if a face has every visible letter of a text. */
  public static boolean covers(Face face, CharSequence text) {
    return text.codePoints().allMatch(c -> isInvisible(c) || face.covers(c));
  }

  /** Returns true if a character has no ink by nature: spaces, controls, joiners, selectors. */
  public static boolean isInvisible(int codePoint) {
    if (codePoint > ' ' && codePoint < 0x7F) {
      return false;
    }
    return codePoint <= ' '
        || UCharacter.isWhitespace(codePoint)
        || UCharacter.isISOControl(codePoint)
        || UCharacter.hasBinaryProperty(codePoint, UProperty.DEFAULT_IGNORABLE_CODE_POINT);
  }

  /**
   * The letters of a language that a face lacks, in code point order.
   *
   * @param capitals whether it is lettered in capitals: then only capitals are needed
   */
  public static List<String> missing(Face face, Language language, boolean capitals) {
    return letters(language, capitals).stream().filter(letter -> !covers(face, letter)).toList();
  }

  /** The letters a language is written in, in code point order. */
  public static List<String> letters(Language language, boolean capitals) {
    ULocale locale = ULocale.forLanguageTag(language.tag());
    UnicodeSet letters = new UnicodeSet();
    for (String letter : exemplars(locale, LocaleData.ES_STANDARD)) {
      if (!capitals || !language.hasCapitals()) {
        letters.addAll(letter);
      }
      if (language.hasCapitals()) {
        letters.addAll(UCharacter.toUpperCase(locale, letter)); // each of them: ß is S and S
      }
    }
    letters.addAll(exemplars(locale, LocaleData.ES_PUNCTUATION)).addAll('0', '9');
    return letters.stream().toList();
  }

  /** Returns true if a face is made for a language: it has most of its letters. */
  public static boolean suits(Face face, Language language) {
    return missing(face, language, false).size() * 2 < letters(language, false).size();
  }

  private static UnicodeSet exemplars(ULocale locale, int kind) {
    return LocaleData.getInstance(locale).getExemplarSet(0, kind);
  }
}
