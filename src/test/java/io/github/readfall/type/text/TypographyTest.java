package io.github.readfall.type.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.ibm.icu.util.LocaleData;
import com.ibm.icu.util.ULocale;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class TypographyTest {

  static Stream<Language> languages() {
    return Languages.all().stream();
  }

  /** Quotation marks from CLDR, by way of ICU. */
  @ParameterizedTest
  @MethodSource("languages")
  void quotesAreThoseOfCldr(Language language) {
    LocaleData cldr = LocaleData.getInstance(ULocale.forLanguageTag(language.tag()));
    String outer =
        cldr.getDelimiter(LocaleData.QUOTATION_START)
            + "a"
            + cldr.getDelimiter(LocaleData.QUOTATION_END);
    String inner =
        cldr.getDelimiter(LocaleData.ALT_QUOTATION_START)
            + "b"
            + cldr.getDelimiter(LocaleData.ALT_QUOTATION_END);
    assertEquals(outer, closed(language, "\"a\""));
    String nested = outer.replace("a", "a " + inner + " a");
    assertEquals(nested, closed(language, "\"a 'b' a\""));
  }

  /** Without the narrow space that French has inside its quotes. */
  private static String closed(Language language, String typed) {
    String text = printed(language, typed);
    return language.tag().equals("fr") ? text.replace("« ", "«").replace(" »", "»") : text;
  }

  /** The Unicode Standard, chapter 6: U+2019 is the apostrophe. The words are of our own choice. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "en | 'Twas rock 'n' roll. | ’Twas rock ’n’ roll.",
        "en | Get 'em in the '90s! | Get ’em in the ’90s!",
        "en | 'Yes' and 'no'. | ‘Yes’ and ‘no’.",
        "en | 'The dogs' bones' it's. | ‘The dogs’ bones’ it’s.",
        "en | Runnin' fast, 'allo. | Runnin’ fast, ’allo.",
        "en | She said \"it's 'so'\". | She said “it’s ‘so’”.",
        "en | He is 6'2\" and 27\" wide. | He is 6'2\" and 27\" wide.",
        "en | \"He is 6'2\" tall\" | “He is 6'2\" tall”",
        "fr | L'eau d'Ilse | L’eau d’Ilse",
        "it | L'acqua un po' fredda | L’acqua un po’ fredda",
        "uk | м'яч | м’яч",
        "he | צה\"ל ג'וק | צה\"ל ג'וק",
        "ja | 彼は\"はい\"と | 彼は「はい」と"
      })
  void apostrophesAreToldFromQuotes(String tag, String typed, String lettered) {
    assertEquals(lettered, printed(Languages.of(tag), typed));
  }

  @ParameterizedTest
  @CsvSource({"Well..., Well…", "Well...., Well….", "......, ……", "Well.., Well..", "……, ……"})
  void threeStopsAreAnEllipsis(String typed, String lettered) {
    assertEquals(lettered, printed(Languages.of("en"), typed));
  }

  @Test
  void threeStopsStayWithoutAnEllipsisInTheFace() {
    Language english = Languages.of("en");
    assertEquals("So...", Typography.printed("So…", english, c -> c < 0x80).text());
    assertEquals("\"It's\"", Typography.printed("\"It's\"", english, c -> c < 0x80).text());
  }

  @ParameterizedTest
  @CsvSource({
    "No--wait, No—wait, No--wait",
    "No—wait, No—wait, No--wait",
    "No – wait 5–7, No — wait 5–7, No -- wait 5–7",
    "well-known, well-known, well-known"
  })
  void dashesHaveOneForm(String typed, String em, String hyphens) {
    assertEquals(em, dashed("en", typed, Optional.of("—")));
    assertEquals(hyphens, dashed("en", typed, Optional.of("--")));
    assertEquals(typed, dashed("en", typed, Optional.empty()));
  }

  @Test
  void aChineseDashStays() {
    assertEquals("不——等", dashed("zh", "不——等", Optional.of("--")));
  }

  @Test
  void everyPlaceMovesWithItsLetter() {
    String typed = "It's... \"so\"... now";
    Typography lettered = Typography.printed(typed, Languages.of("en"), c -> true);
    for (String word : List.of("It", "so", "now")) {
      int moved = lettered.placeOf().applyAsInt(typed.indexOf(word));
      assertEquals(lettered.text().indexOf(word), moved);
    }
    assertEquals(lettered.text().length(), lettered.placeOf().applyAsInt(typed.length()));
  }

  private static String dashed(String tag, String text, Optional<String> form) {
    return Typography.dashed(text, Languages.of(tag), form, c -> true).text();
  }

  private static String printed(Language language, String text) {
    return Typography.printed(text, language, c -> true).text();
  }
}
