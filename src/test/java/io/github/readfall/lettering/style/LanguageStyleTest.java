package io.github.readfall.lettering.style;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.script.CueKind;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The tables [languages.TAG]. */
class LanguageStyleTest {

  private static final String TOML =
      """
      [voices.default]
      face = "fonts/Own.ttf"
      [voices.ILSE]
      face = "fonts/Ilse.ttf"
      [languages.ar]
      face = "fonts/Naskh.ttf"
      size = 1.5
      leading = 1.2
      reads = "rtl"
      [languages.pt]
      size = 2
      [languages.pt-BR]
      size = 3
      """;

  private static HouseStyle read(String toml) {
    ReadStyle read = new StyleReader().read(toml, "series.toml");
    assertEquals(List.of(), read.findings());
    return read.style();
  }

  @Test
  void aLanguageHasItsOwnFaceSizeLeadingAndSide() {
    HouseStyle style = read(TOML);
    HouseStyle arabic = style.in("ar");
    assertEquals(Optional.of("fonts/Naskh.ttf"), face(arabic, "SAMI"));
    assertEquals(Optional.of("fonts/Ilse.ttf"), face(arabic, "ILSE"), "a voice keeps its own");
    assertEquals(1.5 * 17.2, arabic.lettering().readingArcmin(), 1e-9);
    assertEquals(1.38, arabic.lettering().leadingEm(), 1e-9);
    assertEquals(ReadingSide.RTL, arabic.strip().reads());
    assertEquals(ReadingSide.LTR, style.strip().reads());
  }

  private static Optional<String> face(HouseStyle style, String voice) {
    return style.look(voice, CueKind.DIALOGUE, List.of()).face();
  }

  @Test
  void whatIsInALanguageAlreadyStaysAsItIs() {
    HouseStyle arabic = read(TOML).in("ar");
    assertEquals(arabic, arabic.in("ar"));
    assertEquals(Optional.of("fonts/Naskh.ttf"), arabic.language("ar").face());
  }

  @Test
  void aTagStandsForItselfElseForWhatItIsAKindOf() {
    HouseStyle style = read(TOML);
    assertEquals(3 * 17.2, style.in("pt-BR").lettering().readingArcmin());
    assertEquals(3 * 17.2, style.in("PT-br").lettering().readingArcmin());
    assertEquals(2 * 17.2, style.in("pt-PT").lettering().readingArcmin());
    assertEquals(17.2, style.in("ptx").lettering().readingArcmin());
    assertEquals(style, style.in("en"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"deutsch", "\"de DE\"", "x", "12"})
  void aNameThatIsNoTagIsAFinding(String name) {
    ReadStyle read = new StyleReader().read("[languages." + name + "]\nsize = 2\n", "series.toml");
    assertEquals(1, read.findings().size());
    assertEquals("style/impossible", read.findings().get(0).rule());
    assertTrue(read.findings().get(0).message().contains("language tag"));
    assertEquals(HouseStyle.DEFAULT, read.style());
  }
}
