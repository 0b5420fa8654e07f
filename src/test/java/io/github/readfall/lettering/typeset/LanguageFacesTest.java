package io.github.readfall.lettering.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.style.StyleReader;
import io.github.readfall.type.font.FontShelf;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The faces, sizes and leading of a language with a table of its own in series.toml. */
class LanguageFacesTest {

  private static final FontShelf SHELF = Sample.shelf();
  private static final String KOREAN = "ILSE: 바다가 보여.";

  @ParameterizedTest
  @CsvSource({
    "'', Gaegu", // the bundled chain's first
    "'[languages.ko]\nface = \"Dongle\"', Dongle",
    "'[languages.ko]\nface = \"Dongle\"\n[voices.ILSE]\nface = \"Bangers\"', Dongle",
    "'[languages.ko]\nface = \"Bangers\"', Gaegu", // which has no hangul
    "'[voices.ILSE]\nface = \"Dongle\"\n[languages.ko]\nface = \"Gaegu\"', Dongle",
    "'[languages.ja]\nface = \"Dongle\"', Gaegu"
  })
  void lettersAreOfTheVoicesFaceElseOfTheLanguagesElseOfTheBundled(String toml, String family) {
    assertEquals(family, set(toml, "ko", KOREAN).type().face().file().family());
  }

  @Test
  void aWordInAnotherScriptIsNotMovedByIt() {
    SetBalloon balloon = set("[languages.ko]\nface = \"Dongle\"", "en", "ILSE: Say 바다!");
    assertEquals(
        List.of("Grandstander", "Gaegu", "Grandstander"),
        balloon.lines().stream()
            .flatMap(line -> line.line().runs().stream())
            .map(run -> run.type().face().file().family())
            .toList());
  }

  @Test
  void sizeAndLeadingAreTimesWhatTheyWouldBe() {
    SetBalloon usual = set("", "ko", KOREAN);
    SetBalloon large = set("[languages.ko]\nsize = 1.5\nleading = 1.2", "ko", KOREAN);
    assertEquals(1.5 * usual.characterPx(), large.characterPx(), 0.01);
    assertEquals(1.5 * 1.2 * usual.leadingPx(), large.leadingPx(), 0.01);
    assertEquals(1.5 * usual.marginPx(), large.marginPx(), 0.01);
  }

  private static SetBalloon set(String toml, String tag, String cue) {
    HouseStyle style = new StyleReader().read(toml, "series.toml").style().in(tag);
    return new Typesetter(SHELF, style).set(Sample.script(tag, cue)).balloons().get(0);
  }
}
