package io.github.readfall.type.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sentence boundaries: Unicode Standard Annex 29. */
class SentenceEndsTest {

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      value = {
        "en, `It is late. Go home. We will talk about it in the morning.`, `It is late. Go home.`",
        "en, `Nobody turned the wheel of the mill at all. It is late.`, `…of the mill at"
            + " all.`",
        "en, `Only one sentence`, ``",
        "ja, `水は来ない。水車は止まった。`, `水は来ない。`"
      })
  void theEndNearestToTheMiddleIsNamed(String language, String text, String words) {
    assertEquals(
        words, SentenceEnds.nearestToTheMiddle(text, Locale.forLanguageTag(language)).orElse(""));
  }
}
