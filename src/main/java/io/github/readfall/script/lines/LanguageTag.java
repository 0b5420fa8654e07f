package io.github.readfall.script.lines;

import io.github.readfall.base.finding.Shortened;
import io.github.readfall.script.Header;
import io.github.readfall.script.Letters;
import java.util.Arrays;
import java.util.IllformedLocaleException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads language tags: of the header Language, and of translations. */
public final class LanguageTag {

  private static final String DEFAULT = "en";
  private static final String KEY = "Language";

  private LanguageTag() {}

  /** A well-formed BCP 47 tag; {@code en} if none is given or it cannot be read. */
  public static String read(HeaderReader.Top top, FindingList findings) {
    String written = top.value(KEY);
    if (written.isEmpty()) {
      return DEFAULT;
    }
    Optional<String> tag = tag(written);
    if (tag.isEmpty()) {
      int line =
          top.headers().stream()
              .filter(header -> header.key().equalsIgnoreCase(KEY))
              .mapToInt(Header::line)
              .findFirst()
              .orElse(1);
      findings.warning(
          "language",
          line,
          1,
          "\""
              + Shortened.to(FindingList.MAX_QUOTED, written)
              + "\" is no language tag, so the script is read as English.",
          advice(written));
    }
    return tag.orElse(DEFAULT);
  }

  /** The well-formed BCP 47 tag of a language that there is, in its usual form. */
  public static Optional<String> tag(String written) {
    try {
      Locale locale = new Locale.Builder().setLanguageTag(written.replace('_', '-')).build();
      return isLanguage(locale.getLanguage())
          ? Optional.of(locale.toLanguageTag())
          : Optional.empty();
    } catch (IllformedLocaleException notATag) {
      return Optional.empty();
    }
  }

  /** Returns true if two tags are of one language, written in one script, in any region. */
  public static boolean isSameLanguage(String one, String other) {
    Locale a = Locale.forLanguageTag(one);
    Locale b = Locale.forLanguageTag(other);
    boolean sameScript =
        a.getScript().isEmpty() || b.getScript().isEmpty() || a.getScript().equals(b.getScript());
    return a.getLanguage().equals(b.getLanguage()) && sameScript;
  }

  /** Codes of two letters are all listed; of those of three there are too many to doubt one. */
  private static boolean isLanguage(String code) {
    return code.length() == 3 || (code.length() == 2 && codes().contains(code));
  }

  private static String advice(String written) {
    return codes().stream()
        .filter(code -> isNameOf(code, written))
        .findFirst()
        .map(code -> "Write \"Language: " + code + "\".")
        .orElse("Write a tag such as en, de, pt-BR or ko.");
  }

  private static boolean isNameOf(String code, String written) {
    Locale locale = Locale.forLanguageTag(code);
    String name = Letters.fold(written);
    return name.equals(Letters.fold(locale.getDisplayLanguage(Locale.ENGLISH)))
        || name.equals(Letters.fold(locale.getDisplayLanguage(locale)));
  }

  private static List<String> codes() {
    return Arrays.asList(Locale.getISOLanguages());
  }
}
