package io.github.readfall.type.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.ibm.icu.lang.UCharacter;
import com.ibm.icu.lang.UProperty;
import com.ibm.icu.lang.UScript;
import com.ibm.icu.util.LocaleData;
import com.ibm.icu.util.ULocale;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The page about languages says what the code does, and the code what CLDR and Unicode say. */
class LanguageTableTest {

  private static final Path PAGE = Path.of("docs/languages-table.md");

  static Stream<Language> languages() {
    return Languages.all().stream();
  }

  @Test
  void isSortedByTagAndHasEachOnce() {
    List<String> tags = languages().map(Language::tag).toList();
    assertEquals(tags.stream().sorted().distinct().toList(), tags);
  }

  @ParameterizedTest
  @MethodSource("languages")
  void hasARowOfThePageThatSaysWhatIsDoneAndWhy(Language language) throws IOException {
    List<String> rows = rows().filter(row -> row.startsWith("| " + language.tag() + " |")).toList();
    assertEquals(1, rows.size());
    int why = rows.get(0).lastIndexOf(" | ", rows.get(0).length() - 3);
    assertEquals(row(language), rows.get(0).substring(0, why));
    assertFalse(rows.get(0).substring(why + 3).replace("|", "").isBlank(), "no reason given");
  }

  @Test
  void thePageHasNoOtherRow() throws IOException {
    assertEquals(Languages.all().size(), rows().count());
  }

  private static Stream<String> rows() throws IOException {
    return Files.readAllLines(PAGE).stream().filter(row -> row.matches("\\| [a-z]{2}[ -].*"));
  }

  /** What is done for a language, all but the reason. */
  private static String row(Language language) {
    return Stream.of(
            language.tag(),
            language.script(),
            language.direction(),
            size(language),
            String.format(Locale.ROOT, "%.2f", language.leadingFactor()),
            language.hasCapitals() ? "yes" : "no",
            language.habits().canBeSpaced() ? "yes" : "no",
            language.canSlant() ? "leans" : "weight",
            lines(language),
            marks(language))
        .collect(Collectors.joining(" | ", "| ", ""));
  }

  private static String size(Language language) {
    return language.letters().stream()
        .map(kind -> kind.word().replace('-', ' '))
        .collect(Collectors.joining(", "));
  }

  private static String lines(Language language) {
    Breaking breaking = language.breaking();
    String by = breaking.byWord() ? "by word" : "strict";
    return breaking.tag().equals(breaking.looseTag()) ? by : "by phrase";
  }

  private static String marks(Language language) {
    Stream<String> conventions =
        language.habits().conventions().stream().map(LanguageTableTest::words);
    Stream<String> closing =
        language.habits().compression() == Compression.NONE ? Stream.of() : Stream.of("half width");
    String all = Stream.concat(conventions, closing).collect(Collectors.joining(", "));
    return all.isEmpty() ? "–" : all;
  }

  private static String words(Convention convention) {
    return convention.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** By the exemplars of CLDR: their script, their direction, and whether they have capitals. */
  @ParameterizedTest
  @MethodSource("languages")
  void isOfTheScriptAndDirectionThatItsLettersHave(Language language) {
    String letter =
        LocaleData.getInstance(ULocale.forLanguageTag(language.tag()))
            .getExemplarSet(0, LocaleData.ES_STANDARD)
            .stream()
            .filter(each -> Character.isLetter(each.codePointAt(0)))
            .reduce((first, next) -> next)
            .orElseThrow();
    ULocale likely = ULocale.addLikelySubtags(ULocale.forLanguageTag(language.tag()));
    assertEquals(scriptOf(likely.getScript()), language.script());
    assertEquals(likely.isRightToLeft(), language.rightToLeft());
    boolean cased = UCharacter.hasBinaryProperty(letter.codePointAt(0), UProperty.CASED);
    assertEquals(cased, language.hasCapitals(), letter);
  }

  /** Korean is Kore in CLDR, hangul with Han; here it is lettered in hangul. */
  private static String scriptOf(String likely) {
    return likely.equals(UScript.getShortName(UScript.KOREAN)) ? "Hang" : likely;
  }

  /** Letters that join are those with a joining type: of Arabic here, and of no cased script. */
  @ParameterizedTest
  @MethodSource("languages")
  void lettersThatJoinAreNeverSpacedApart(Language language) {
    boolean joins =
        Coverage.letters(language, false).stream()
            .anyMatch(
                letter ->
                    UCharacter.getIntPropertyValue(letter.codePointAt(0), UProperty.JOINING_TYPE)
                        == UCharacter.JoiningType.DUAL_JOINING);
    assertFalse(joins && language.habits().canBeSpaced(), language.tag());
  }
}
