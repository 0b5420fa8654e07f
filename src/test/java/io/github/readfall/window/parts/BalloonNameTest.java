package io.github.readfall.window.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.readfall.script.Keywords;
import io.github.readfall.script.Script;
import io.github.readfall.script.read.ScriptReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class BalloonNameTest {

  private static final Script SCRIPT =
      new ScriptReader()
          .read(
              """
              PANEL
              MARA: One.
              OLD ODDA: Two.
              MARA: Three.
              CAPTION: Four.
              SFX: bang
              SFX: bing
              """,
              Keywords.ENGLISH)
          .script();

  @ParameterizedTest
  @CsvSource({
    "p1-1, MARA's first balloon in panel 1",
    "p1-2, OLD ODDA's balloon in panel 1",
    "p1-3, MARA's second balloon in panel 1",
    "p1-4, the caption in panel 1",
    "p1-6, the second sound effect in panel 1",
    "p9-9, a balloon"
  })
  void balloonsAreNamedBySpeakerAndPosition(String id, String name) {
    assertEquals(name, BalloonName.of(SCRIPT, id));
  }
}
