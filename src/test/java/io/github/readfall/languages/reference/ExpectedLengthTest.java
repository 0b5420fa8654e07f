package io.github.readfall.languages.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.type.text.DisplayCells;
import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.Languages;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class ExpectedLengthTest {

  private static final Language ENGLISH = Languages.of("en");

  static List<Language> languages() {
    return Languages.all();
  }

  /**
   * W3C, "Text size in translation": up to 10 characters 200–300 %, 11–20 180–200, 21–30 160–180,
   * 31–50 140–160, 51–70 151–170, over 70 130 % of the source's length; here by hand, rounded up.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 2, 3",
    "5, 10, 15",
    "6, 12, 18",
    "8, 16, 24",
    "10, 20, 30",
    "11, 20, 22",
    "20, 36, 40",
    "21, 34, 38",
    "30, 48, 54",
    "31, 44, 50",
    "50, 70, 80",
    "51, 78, 87",
    "70, 106, 119",
    "71, 93, 93"
  })
  void theTableOfTheW3cIsKeptToAtItsBoundaries(int source, int least, int likely) {
    Expectation expected = ExpectedLength.published(LengthTable.W3C, ENGLISH).of(source);
    assertEquals(new Expectation(least, likely, likely), expected);
  }

  /** The article's own example: "views" becomes "visualizzazioni", three times as long. */
  @Test
  void thePercentagesAreOfTheWholeLength() {
    assertEquals(
        "visualizzazioni".length(),
        ExpectedLength.published(LengthTable.W3C, ENGLISH).of("views".length()).likely());
  }

  /**
   * Embarcadero RAD Studio documentation, "Text": 1–5 characters + 100 %, 6–12 + 80, 13–20 + 60,
   * 21–30 + 40, 31–50 + 20, over 50 + 10; here by hand, rounded up.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 2", "5, 10", "6, 11", "8, 15", "10, 18", "11, 20", "12, 22", "13, 21", "20, 32", "21, 30",
    "30, 42", "31, 38", "50, 60", "51, 57", "70, 77", "71, 79"
  })
  void theTableOfEmbarcaderoIsKeptToAtItsBoundaries(int source, int likely) {
    Expectation expected = ExpectedLength.published(LengthTable.EMBARCADERO, ENGLISH).of(source);
    assertEquals(new Expectation(likely, likely, likely), expected);
  }

  /** The same article's table of ratios to "views", East Asian wide letters counted twice. */
  @ParameterizedTest
  @CsvSource({
    "조회, 0.8",
    "次檢視, 1.2",
    "visualizações, 2.6",
    "consultations, 2.6",
    "-mal angesehen, 2.8",
    "visualizzazioni, 3.0"
  })
  void displayCellsAreThoseOfTheTableOfTheW3c(String translation, double ratio) {
    assertEquals(ratio, DisplayCells.of(translation) / 5.0, 1e-9);
  }

  @Test
  void aPublishedTableSaysThatItIsForEnglish() {
    assertEquals(
        Optional.empty(),
        ExpectedLength.published(LengthTable.W3C, Languages.of("en-GB")).caution());
    assertTrue(
        ExpectedLength.published(LengthTable.W3C, Languages.of("de"))
            .caution()
            .orElseThrow()
            .contains("\"de\""));
  }

  @Test
  void aTableIsFoundByItsWord() {
    for (LengthTable table : LengthTable.values()) {
      assertEquals(Optional.of(table), LengthTable.of(table.word()));
    }
    assertEquals(Optional.empty(), LengthTable.of("guess"));
  }

  /** By hand: 1.14 times as long, of the articles the third and the 27th of thirty. */
  @Test
  void whatIsMeasuredIsTheRatioAndItsSpread() throws Exception {
    ExpectedLength german = ExpectedLength.measured(ENGLISH, Languages.of("de"));
    Ratio ratio = Ratio.of(ENGLISH, Languages.of("de"));
    Expectation expected = german.of(1_000);
    assertEquals(1_000 * ratio.codePoints(), expected.likely(), 0.5);
    assertEquals(1_000 * ratio.articles().get(2), expected.least(), 0.5);
    assertEquals(1_000 * ratio.articles().get(26), expected.most(), 0.5);
    assertEquals(Optional.empty(), german.caution());
  }

  @ParameterizedTest
  @MethodSource("languages")
  void shorterTextsSpreadMore(Language language) throws Exception {
    ExpectedLength lengths = ExpectedLength.measured(ENGLISH, language);
    double before = Double.POSITIVE_INFINITY;
    for (int characters : new int[] {20, 40, 80, 160}) {
      Expectation expected = lengths.of(characters);
      double spread = (expected.most() - expected.least()) / (double) characters;
      assertTrue(spread <= before + 1.0 / characters, language.tag() + " at " + characters);
      before = spread;
    }
  }
}
