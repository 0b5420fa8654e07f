package io.github.readfall.text;

import com.ibm.icu.util.ULocale;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The table of languages. A new language is one entry.
 *
 * <p>Em and leading factors are house defaults, chosen by eye with the bundled faces; no source.
 * Break tags follow what ICU really does: Korean breaks inside words unless asked for phrases;
 * Japanese lets small kana start a line unless asked to be strict.
 */
public final class Languages {

  private static final Set<String> NONE = Set.of();

  private static final List<Language> ALL =
      List.of( // keep sorted by tag
          abugida("ar", "Arab", 1.15, 1.25, true),
          latin("cs", 1.1, NONE, NONE),
          latin("da", 1, Set.of("en", "et", "den", "det", "de"), NONE),
          latin(
              "de",
              1,
              Set.of("der", "die", "das", "den", "dem", "des", "ein", "eine", "einen", "einem"),
              Set.of("an", "auf", "aus", "ein", "her", "hin", "los", "vor", "weg", "zu")),
          cased("el", "Grek", 1, Set.of("ο", "η", "το", "οι", "τα", "τον", "την", "ένα", "μια")),
          latin(
              "en",
              1,
              Set.of("a", "an", "the"),
              Set.of("away", "back", "down", "in", "off", "on", "out", "over", "up")),
          latin("es", 1, Set.of("el", "la", "los", "las", "un", "una", "lo", "al", "del"), NONE),
          latin("fi", 1, NONE, NONE),
          latin("fr", 1, Set.of("le", "la", "les", "un", "une", "des", "du", "au", "aux"), NONE),
          abugida("he", "Hebr", 1, 1.1, true),
          abugida("hi", "Deva", 1.05, 1.2, false),
          latin("hu", 1.05, Set.of("a", "az", "egy"), NONE),
          latin("id", 1, NONE, NONE),
          latin("it", 1, Set.of("il", "lo", "la", "i", "gli", "le", "un", "uno", "una"), NONE),
          ideographic("ja", "Jpan", "ja-u-lb-strict-lw-phrase", "ja-u-lb-strict"),
          ideographic("ko", "Hang", "ko-u-lb-strict-lw-phrase", "ko-u-lb-strict"),
          latin("nl", 1, Set.of("de", "het", "een"), NONE),
          latin("pl", 1.05, NONE, NONE),
          latin("pt", 1, Set.of("o", "a", "os", "as", "um", "uma", "do", "da", "no", "na"), NONE),
          latin("ro", 1.05, Set.of("un", "o", "niște"), NONE),
          cased("ru", "Cyrl", 1, NONE),
          latin("sv", 1.05, Set.of("en", "ett", "den", "det", "de"), NONE),
          abugida("th", "Thai", 1.1, 1.3, false),
          latin("tr", 1.05, Set.of("bir"), NONE),
          cased("uk", "Cyrl", 1, NONE),
          latin("vi", 1.2, NONE, NONE),
          ideographic("zh", "Hans", "zh-u-lb-strict", "zh-u-lb-strict"),
          ideographic("zh-Hant", "Hant", "zh-Hant-u-lb-strict", "zh-Hant-u-lb-strict"));

  private static final double IDEOGRAPH_LEADING = 1.15;

  private Languages() {}

  private static Language latin(
      String tag, double leadingFactor, Set<String> articles, Set<String> particles) {
    return new Language(
        tag,
        "Latn",
        tag + "-u-lb-strict",
        tag + "-u-lb-strict",
        SizeBasis.CAPITAL,
        1,
        leadingFactor,
        true,
        false,
        articles,
        particles);
  }

  private static Language cased(
      String tag, String script, double leadingFactor, Set<String> articles) {
    String breaks = tag + "-u-lb-strict";
    return new Language(
        tag,
        script,
        breaks,
        breaks,
        SizeBasis.CAPITAL,
        1,
        leadingFactor,
        true,
        false,
        articles,
        NONE);
  }

  private static Language ideographic(String tag, String script, String breaks, String loose) {
    return new Language(
        tag,
        script,
        breaks,
        loose,
        SizeBasis.IDEOGRAPH,
        1,
        IDEOGRAPH_LEADING,
        false,
        false,
        NONE,
        NONE);
  }

  private static Language abugida(
      String tag, String script, double emFactor, double leadingFactor, boolean rightToLeft) {
    String breaks = tag + "-u-lb-strict";
    return new Language(
        tag,
        script,
        breaks,
        breaks,
        SizeBasis.EM,
        emFactor,
        leadingFactor,
        false,
        rightToLeft,
        NONE,
        NONE);
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
