package io.github.readfall.job.polyglot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.geom.Box;
import io.github.readfall.languages.translate.Translation;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.series.Episode;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Balloons that hold a cue in several languages. */
class SharedBalloonsTest {

  private static final Episode EPISODE =
      Editions.episode("ILSE: Who turned the wheel?", "OTTO: Nobody.", "SFX: CLACK");
  private static final Edition ORIGINAL = Edition.original(EPISODE);
  private static final Edition GERMAN =
      Editions.edition(EPISODE, "de", "Wer hat das Mühlrad gedreht?", "Niemand.", "KLACK");
  private static final Edition KOREAN = Editions.edition(EPISODE, "ko", "누가 돌렸어?", "아무도.", "딱");

  @Test
  void everyLanguageGoesInAtReadingSize() {
    SharedBalloons shared = SharedBalloons.of(ORIGINAL, List.of(GERMAN, KOREAN), Map.of());
    for (Edition edition : List.of(ORIGINAL, GERMAN, KOREAN)) {
      for (SetBalloon balloon :
          edition.typesetter().set(edition.script(), shared.wanted(Map.of())).balloons()) {
        assertTrue(
            balloon.given().isEmpty() || balloon.given().get().fits(),
            edition.language() + " " + balloon.cue().id());
      }
    }
  }

  @Test
  void itSaysWhoDecidedAndWhatItCosts() {
    SharedBalloon shared =
        SharedBalloons.of(ORIGINAL, List.of(GERMAN, KOREAN), Map.of()).of("p1-1").orElseThrow();
    assertEquals("de", shared.decidedBy());
    Box own = ORIGINAL.typesetter().set(ORIGINAL.script()).balloons().get(0).box();
    assertEquals(own.width(), shared.ownSize().width(), 1e-9);
    assertEquals(
        shared.size().width() * shared.size().height() / (own.width() * own.height()) - 1,
        shared.cost(),
        1e-9);
    assertTrue(shared.cost() > 0);
  }

  @Test
  void whatIsShorterInEveryOtherLanguageCostsNothing() {
    Edition brief = Editions.edition(EPISODE, "ko", "누구?", "응.", "딱");
    SharedBalloon shared =
        SharedBalloons.of(ORIGINAL, List.of(brief), Map.of()).of("p1-1").orElseThrow();
    assertEquals("en", shared.decidedBy());
    assertEquals(0, shared.cost(), 1e-9);
  }

  @Test
  void whatAStandInDecidesIsMarkedAsExpected() {
    Translation none = Translation.empty("de", EPISODE.script());
    Translation standIn =
        Editions.translation(
            EPISODE, "de", "Grundfreiheiten und Menschenrechte überall?", "Würde.", "Recht");
    Edition expected = Edition.of(EPISODE, none, standIn);
    SharedBalloon shared =
        SharedBalloons.of(ORIGINAL, List.of(expected), Map.of()).of("p1-1").orElseThrow();
    assertTrue(shared.expected());
    assertEquals("de", shared.decidedBy());
  }
}
