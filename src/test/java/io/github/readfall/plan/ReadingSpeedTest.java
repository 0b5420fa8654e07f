package io.github.readfall.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.script.CueText;
import io.github.readfall.script.MarkupReader;
import io.github.readfall.type.text.Languages;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reading speeds against what others have published. */
class ReadingSpeedTest {

  /**
   * 238 and 260 words a minute: silent English non-fiction and fiction (Brysbaert 2019, J. Memory
   * and Language 109:104047). 25, 35 and 210 words: a balloon, a panel of six and a page by Mort
   * Weisinger's rule as Alan Moore told it. 160 and 180 a minute: BBC Subtitle Guidelines, 4. 987
   * and 882.35 characters: IReST's English, and 68 ms each (Trauzettel-Klosinski and Dietz 2012).
   */
  @ParameterizedTest
  @CsvSource({
    "25, 238, 6.303",
    "25, 260, 5.769",
    "35, 238, 8.824",
    "210, 260, 48.462",
    "1, 160, 0.375",
    "1, 180, 0.3333",
    "16.45, 987, 1.0",
    "14.706, 882.353, 1.0"
  })
  void secondsAtAPublishedSpeed(double count, double perMinute, double seconds) {
    assertEquals(seconds, ReadingSpeed.seconds(count, perMinute), 0.001);
  }

  /**
   * Silent English fiction is 260 (Brysbaert 2019), aloud 228; every other language keeps its ratio
   * to that (IReST: Trauzettel-Klosinski and Dietz 2012, IOVS 53(9)). Korean and Hindi are not in
   * it and go by the mean of 184 words, Thai by the mean of 863 characters.
   */
  @ParameterizedTest
  @CsvSource({
    "en, 228, false",
    "de, 179, false",
    "fi, 161, false",
    "nl, 202, false",
    "ar, 138, false",
    "pt-BR, 181, false",
    "zh, 255, true",
    "zh-Hant, 255, true",
    "ja, 357, true",
    "ko, 184, false",
    "hi, 184, false",
    "th, 863, true"
  })
  void everyLanguageIsScaledFromAloudToSilent(String tag, int aloud, boolean byCharacters) {
    ReadingSpeed speed = ReadingSpeed.of(Languages.of(tag));
    assertEquals(aloud * 260.0 / 228, speed.perMinute(), 1e-9);
    assertEquals(byCharacters, speed.byCharacters());
  }

  /** Four words stay for at least 1.2 s (BBC Subtitle Guidelines, 4.1). */
  @Test
  void noWordIsReadFasterThanASubtitle() {
    CueText four = MarkupReader.text("It is counting again.");
    assertEquals(1.2, new ReadingSpeed(260, false).seconds(four), 1e-9);
    assertEquals(1.2, ReadingSpeed.of(Languages.of("en")).seconds(four), 1e-9);
  }

  @Test
  void aSlowLanguageTakesItsOwnTime() {
    double seconds =
        ReadingSpeed.of(Languages.of("fi")).seconds(MarkupReader.text("Se laskee taas yötä."));
    assertEquals(4 * 60 / (161 * 260.0 / 228), seconds, 1e-9);
    assertTrue(seconds > 1.2);
  }

  @Test
  void aScriptWithoutSpacesIsReadByItsCharacters() {
    double seconds = ReadingSpeed.of(Languages.of("zh")).seconds(MarkupReader.text("磨坊立在 水中。"));
    assertEquals(7 * 60 / (255 * 260.0 / 228), seconds, 1e-9);
  }

  @Test
  void nobodyReadsNothingAMinute() {
    assertThrows(IllegalArgumentException.class, () -> new ReadingSpeed(0, false));
  }
}
