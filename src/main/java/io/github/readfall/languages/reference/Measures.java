package io.github.readfall.languages.reference;

import com.ibm.icu.text.BreakIterator;
import com.ibm.icu.util.ULocale;
import io.github.readfall.type.text.DisplayCells;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;

/**
 * The length of a text, by every measure in use for lengths.
 *
 * @param codePoints Unicode code points, spaces counted: what this project calls characters
 * @param graphemes letters as a reader sees them: extended grapheme clusters (UAX #29)
 * @param displayCells cells of a terminal (UAX #11)
 * @param utf8Bytes bytes in UTF-8
 * @param words separated by spaces; meaningless in a language written without
 * @param longestWord letters and marks in a row, in code points
 */
public record Measures(
    int codePoints, int graphemes, int displayCells, int utf8Bytes, int words, int longestWord) {

  private static final Pattern SPACES = Pattern.compile(" +");
  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{M}]+");

  /** Measures a text. */
  public static Measures of(String text) {
    return new Measures(
        text.codePointCount(0, text.length()),
        graphemes(text),
        DisplayCells.of(text),
        text.getBytes(StandardCharsets.UTF_8).length,
        text.isBlank() ? 0 : SPACES.split(text.strip()).length,
        WORD.matcher(text)
            .results()
            .mapToInt(word -> word.group().codePointCount(0, word.group().length()))
            .max()
            .orElse(0));
  }

  private static int graphemes(String text) {
    BreakIterator clusters = BreakIterator.getCharacterInstance(ULocale.ROOT);
    clusters.setText(text);
    int count = 0;
    while (clusters.next() != BreakIterator.DONE) {
      count++;
    }
    return count;
  }
}
