package io.github.readfall.window.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.readfall.script.Keywords;
import io.github.readfall.script.Script;
import io.github.readfall.script.read.ScriptReader;
import io.github.readfall.window.model.CaretCounts.CueWords;
import io.github.readfall.window.model.CaretCounts.Said;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CaretCountsTest {

  private static final Script SCRIPT =
      new ScriptReader()
          .read(
              """
              SCENE Mill
              PANEL 7  tall
              Rain falls on everything.
              ILSE: It is
                *counting* / again.
              SFX (drawn): TOK TOK

              PANEL
              花: 静かに待って
              """,
              Keywords.ENGLISH)
          .script();

  private static final Said SEVEN = new Said("7", 6, 1);
  private static final Said ALL = new Said("", 9, 2);

  @Test
  void countsTheCueThatALineRunsOnFrom() {
    CaretCounts counts = CaretCounts.of(SCRIPT, 5);
    assertEquals(Optional.of(new CueWords("ILSE", 4)), counts.cue());
    assertEquals(Optional.of(SEVEN), counts.panel());
    assertEquals(ALL, counts.episode());
  }

  @Test
  void countsTheSecondPanelByItsPlace() {
    CaretCounts counts = CaretCounts.of(SCRIPT, 9);
    assertEquals(Optional.of(new CueWords("花", 3)), counts.cue());
    assertEquals(Optional.of(new Said("2", 3, 1)), counts.panel());
  }

  @Test
  void countsNoCueInADescription() {
    assertEquals(
        new CaretCounts(Optional.empty(), Optional.of(SEVEN), ALL), CaretCounts.of(SCRIPT, 3));
  }

  @Test
  void countsTheEpisodeAboveTheFirstPanel() {
    assertEquals(
        new CaretCounts(Optional.empty(), Optional.empty(), ALL), CaretCounts.of(SCRIPT, 1));
  }
}
