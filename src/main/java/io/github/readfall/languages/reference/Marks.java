package io.github.readfall.languages.reference;

import com.ibm.icu.util.LocaleData;
import com.ibm.icu.util.ULocale;
import io.github.readfall.type.text.Language;
import java.util.Map;

/**
 * The marks of a language: quotation marks by CLDR, the others by common practice.
 *
 * @param language of the marks
 * @param opens its opening quotation mark
 * @param closes its closing quotation mark
 * @param own its replacements of marks of English
 */
record Marks(Language language, String opens, String closes, Map<String, String> own) {

  private static final String QUOTES = "\"“”„‟«»‹›「」『』";
  private static final String NO_BREAK_SPACE = "\u00A0";
  private static final Map<String, String> FULL_WIDTH =
      Map.of(".", "。", "!", "！", "?", "？", "(", "（", ")", "）");
  private static final Map<String, String> TO_ENGLISH =
      Map.of("。", ".", "।", ".", "！", "!", "？", "?", "؟", "?", "（", "(", "）", ")", "‥", "…");

  static Marks of(Language language) {
    LocaleData data = LocaleData.getInstance(ULocale.forLanguageTag(language.tag()));
    String space = language.locale().getLanguage().equals("fr") ? NO_BREAK_SPACE : "";
    return new Marks(
        language,
        data.getDelimiter(LocaleData.QUOTATION_START) + space,
        space + data.getDelimiter(LocaleData.QUOTATION_END),
        own(language));
  }

  private static Map<String, String> own(Language language) {
    return switch (language.locale().getLanguage()) {
      case "ja", "zh" -> FULL_WIDTH;
      case "ar" -> Map.of("?", "؟");
      case "el" -> Map.of("?", ";");
      case "hi" -> Map.of(".", "।");
      case "th" -> Map.of(".", "");
      default -> Map.of();
    };
  }

  /** The marks before the words of a sentence that begins and ends so. */
  String opening(String opening, String ending) {
    StringBuilder marks = new StringBuilder();
    english(opening)
        .codePoints()
        .filter(c -> c != '¿' && c != '¡')
        .forEach(c -> marks.append(mark(c, opens)));
    if (language.locale().getLanguage().equals("es")) {
      marks.append(inverted(english(ending)));
    }
    return marks.toString();
  }

  /** {@code ?!} is opened by {@code ¡¿}. */
  private static String inverted(String ending) {
    StringBuilder inverted = new StringBuilder();
    for (int i = ending.length() - 1; i >= 0; i--) {
      char c = ending.charAt(i);
      inverted.append(c == '?' ? "¿" : c == '!' ? "¡" : "");
    }
    return inverted.toString();
  }

  /** The marks after the words of a sentence that ends so. */
  String ending(String ending) {
    StringBuilder marks = new StringBuilder();
    String english = english(ending);
    boolean spaced = language.locale().getLanguage().equals("fr");
    if (spaced && (english.startsWith("?") || english.startsWith("!"))) {
      marks.append(NO_BREAK_SPACE);
    }
    english.codePoints().forEach(c -> marks.append(mark(c, closes)));
    return marks.toString();
  }

  private String mark(int codePoint, String quote) {
    if (QUOTES.indexOf(codePoint) >= 0) {
      return quote;
    }
    String mark = Character.toString(codePoint);
    return own.getOrDefault(mark, mark);
  }

  private static String english(String marks) {
    StringBuilder english = new StringBuilder();
    marks
        .codePoints()
        .mapToObj(Character::toString)
        .forEach(mark -> english.append(TO_ENGLISH.getOrDefault(mark, mark)));
    return english.toString().replaceAll("\\.{2,}", "…");
  }
}
