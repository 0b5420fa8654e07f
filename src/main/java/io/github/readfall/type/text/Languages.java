package io.github.readfall.type.text;

import com.ibm.icu.util.ULocale;
import io.github.readfall.base.viewing.LetterKind;
import java.util.List;
import java.util.Optional;

/**
 * The table of languages. A new language is one entry: the script it is lettered in, and its
 * differences from others of that kind.
 *
 * <p>Leading factors are house defaults, chosen by eye with the bundled faces; no source. Break
 * tags follow what ICU really does: Korean breaks inside words unless asked for phrases; Japanese
 * lets small kana start a line unless asked to be strict.
 */
public final class Languages {

  private static final double SQUARE_LEADING = 1.15;

  private static final List<Language> ALL =
      List.of( // keep sorted by tag
          joined("ar", "Arab", LetterKind.ALEF, LetterKind.TOOTH).fromTheRight().leading(1.25),
          cased("cs", "Latn").leading(1.1),
          cased("da", "Latn"),
          cased("de", "Latn"),
          cased("el", "Grek").leading(1.05),
          cased("en", "Latn"),
          cased("es", "Latn"),
          cased("fi", "Latn"),
          cased("fr", "Latn").typed(Convention.NARROW_SPACES),
          joined("he", "Hebr", LetterKind.HE).fromTheRight().leading(1.1),
          joined("hi", "Deva", LetterKind.KA).leading(1.2),
          cased("hu", "Latn").leading(1.05),
          cased("id", "Latn"),
          cased("it", "Latn"),
          square("ja", "Jpan", LetterKind.IDEOGRAPH, LetterKind.KANA)
              .byPhrase()
              .compressing(Compression.JAPANESE)
              .stressed(Stress.DOTS_OVER),
          square("ko", "Hang", LetterKind.SYLLABLE).byPhrase().leading(1.05),
          cased("nl", "Latn"),
          cased("pl", "Latn").leading(1.05),
          cased("pt", "Latn"),
          cased("ro", "Latn").leading(1.05).typed(Convention.COMMA_BELOW),
          cased("ru", "Cyrl").leading(1.2),
          cased("sv", "Latn").leading(1.05),
          joined("th", "Thai", LetterKind.KO_KAI).leading(1.3),
          cased("tr", "Latn").leading(1.05),
          cased("uk", "Cyrl").leading(1.2),
          cased("vi", "Latn").leading(1.2),
          square("zh", "Hans", LetterKind.IDEOGRAPH)
              .byWord()
              .compressing(Compression.CHINESE)
              .stressed(Stress.DOTS_UNDER),
          square("zh-Hant", "Hant", LetterKind.IDEOGRAPH)
              .byWord()
              .compressing(Compression.CHINESE)
              .stressed(Stress.DOTS_UNDER));

  private Languages() {}

  /** A language with capitals and small letters. */
  private static Language cased(String tag, String script) {
    return row(tag, script, new Sizing(LetterKind.CASED, 1), ScriptTraits.CASED);
  }

  /** A language whose letters fill a square each. */
  private static Language square(String tag, String script, LetterKind... letters) {
    Sizing sizing = new Sizing(List.of(letters), SQUARE_LEADING);
    return row(tag, script, sizing, ScriptTraits.SQUARE);
  }

  /** A language whose letters join, or carry marks on all sides. */
  private static Language joined(String tag, String script, LetterKind... letters) {
    return row(tag, script, new Sizing(List.of(letters), 1), ScriptTraits.JOINED);
  }

  private static Language row(String tag, String script, Sizing sizing, ScriptTraits habits) {
    return new Language(tag, script, false, Breaking.strict(tag), sizing, habits);
  }

  /** Every entry of the table. */
  public static List<Language> all() {
    return ALL;
  }

  /**
   * The entry for a language: its own, else that of the language without region, else English rules
   * under the tag's own name.
   *
   * @param tag BCP 47, e.g. {@code pt-BR}
   */
  public static Language of(String tag) {
    return entry(tag).orElseGet(() -> entry("en").orElseThrow()).withTag(tag);
  }

  /** The first language of the table that is lettered in a script. */
  public static Optional<Language> ofScript(String script) {
    return ALL.stream().filter(entry -> entry.script().equals(script)).findFirst();
  }

  /** The entry of the table by whose rules a language is lettered, if it has one. */
  public static Optional<Language> entry(String tag) {
    ULocale locale = ULocale.forLanguageTag(tag);
    String language = locale.getLanguage();
    boolean traditional =
        language.equals("zh") && ULocale.addLikelySubtags(locale).getScript().equals("Hant");
    String wanted = traditional ? "zh-Hant" : language;
    return ALL.stream().filter(entry -> entry.tag().equals(wanted)).findFirst();
  }
}
