package io.github.readfall.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.strip.Cuts;
import io.github.readfall.strip.galley.Compositor;
import io.github.readfall.strip.galley.Galley;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EpisodeOverviewTest {

  /** Three panels of 2600, 2500 and 1500 px, with 4, 10 and 2 words. */
  private static final String SCRIPT =
      """
      Title: Ebb
      Language: en
      Cast: Ilse, Wouter

      SCENE The mill

      PANEL 1  height 2600

      ILSE: It turns once more.

      PANEL 2  height 2500

      ILSE: Nobody had been near that wheel since the spring tide.

      SCENE The quay

      PANEL 3  height 1500

      WOUTER: Listen now.
      """;

  private static EpisodePlan plan(SetEpisode set) {
    return EpisodePlanner.plan(set, Optional.empty(), OptionalInt.empty());
  }

  private static EpisodeOverview glance(SetEpisode set, EpisodePlan plan) {
    return EpisodeOverview.of(galley(set, plan), plan, 60);
  }

  private static Galley galley(SetEpisode set, EpisodePlan plan) {
    return Compositor.compose(set, plan.layout(), plan.cuts());
  }

  /**
   * By hand: on 360 × 640 dp a screen of a strip of 1600 px is 2844.4 px. Gutters of 48, 20 (an
   * exchange), 160 (a scene) and 48 dp are 213, 89, 711 and 213 px, so the panels stand at 213,
   * 2902 and 6113 px and the strip ends at 7826 px, on the third screen. Each panel begins on a
   * screen of its own, and its words stand in its upper half.
   */
  @Test
  void theCurveHasTheWordsOfEachScreenAsReckonedByHand() {
    SetEpisode set = Planned.set(SCRIPT);
    EpisodeOverview glance = glance(set, plan(set));
    assertEquals(7826, glance.strip().height());
    assertEquals(
        List.of(4, 10, 2), glance.curve().stream().map(EpisodeOverview.Step::words).toList());
    double screenPx = 640 * 1600 / 360.0;
    assertEquals(
        List.of(0.0, screenPx, 2 * screenPx),
        glance.curve().stream().map(EpisodeOverview.Step::topPx).toList());
    assertEquals(7826, glance.curve().get(2).bottomPx());
    assertEquals(screenPx, glance.curve().get(0).bottomPx(), 1e-9);
  }

  /** 0.3 s a word, 4 words in 1.2 s: BBC Subtitle Guidelines, 4.1. */
  @Test
  void wordsTakeAsLongAsSubtitlesDo() {
    SetEpisode set = Planned.set(SCRIPT);
    List<EpisodeOverview.Step> curve = glance(set, plan(set)).curve();
    assertEquals(1.2, curve.get(0).seconds(), 1e-9);
    assertEquals(3, curve.get(1).seconds(), 1e-9);
  }

  /** 138 words a minute aloud: IReST's Arabic; times 260/228, Brysbaert's and IReST's English. */
  @Test
  void aLanguageThatIsReadSlowlyTakesLonger() {
    SetEpisode set =
        Planned.set(
            "Title: Ebb\nLanguage: ar\nCast: Ilse\n\nPANEL 1  height 2000\n\nILSE: هي تدور من جديد\n");
    assertEquals(
        4 * 60 / (138 * 260 / 228.0), glance(set, plan(set)).curve().get(0).seconds(), 1e-9);
  }

  @Test
  void theCurveAddsUpToThePlan() {
    SetEpisode set = Planned.set(SCRIPT);
    EpisodePlan plan = plan(set);
    EpisodeOverview glance = glance(set, plan);
    assertEquals(16, plan.words());
    assertEquals(plan.words(), glance.curve().stream().mapToInt(EpisodeOverview.Step::words).sum());
    assertEquals(
        plan.seconds(),
        glance.curve().stream().mapToDouble(EpisodeOverview.Step::seconds).sum(),
        1e-9);
    assertEquals(Math.ceil(plan.screens().count()), glance.curve().size());
  }

  @Test
  void panelsAreWhereTheyAreOnTheStrip() {
    SetEpisode set = Planned.set(SCRIPT);
    EpisodePlan plan = plan(set);
    assertEquals(
        plan.layout().panels().stream().map(panel -> panel.box()).toList(),
        glance(set, plan).panels());
  }

  @Test
  void theUpperOfTwoFullestScreensIsTold() {
    EpisodeOverview glance = steps(60, 12, 61, 61);
    assertEquals(2, glance.fullest().orElseThrow().screen());
    assertEquals(Optional.empty(), steps(60, 0, 0).fullest());
  }

  @ParameterizedTest
  @CsvSource({"60, false", "61, true"})
  void aScreenIsWordyAboveTheLimitAndNotAtIt(int words, boolean isWordy) {
    EpisodeOverview glance = steps(60, words);
    assertEquals(isWordy, glance.isWordy(glance.curve().get(0)));
  }

  @Test
  void aHeightIsOnOneScreenAlone() {
    EpisodeOverview glance = steps(60, 1, 2);
    assertEquals(1, glance.at(99.9).orElseThrow().screen());
    assertEquals(2, glance.at(100).orElseThrow().screen());
    assertEquals(Optional.empty(), glance.at(200));
  }

  private static EpisodeOverview steps(double most, int... words) {
    List<EpisodeOverview.Step> curve = new ArrayList<>();
    for (int i = 0; i < words.length; i++) {
      curve.add(new EpisodeOverview.Step(i + 1, i * 100, (i + 1) * 100, words[i], 0));
    }
    Box strip = new Box(0, 0, 100, 100.0 * words.length);
    return new EpisodeOverview(strip, List.of(), List.of(), Cuts.NONE, curve, most, 1000);
  }

  /** By hand: 3400 px at a width of 800 are 6800 px of a strip of 1600. */
  @Test
  void itIsTooTallOnlyAboveWhatThePublisherTakes() {
    SetEpisode set = Planned.set(SCRIPT);
    assertFalse(glance(set, plan(set)).isTooTall());
    SetEpisode low = Planned.set(SCRIPT, "[delivery]\nwidth = 800\nmax-episode-height = 3400\n");
    EpisodeOverview glance = glance(low, plan(low));
    assertEquals(6800, glance.tallestPx(), 1e-9);
    assertTrue(glance.isTooTall());
  }

  /** By hand: panel 2 ends at 5402 px, panel 3 begins at 6113 px. */
  @Test
  void partsMeetInTheMiddleOfTheGutter() {
    SetEpisode set = Planned.set(SCRIPT);
    EpisodePlan plan = plan(set);
    Split split = EpisodePlanner.split(set, plan, 2).orElseThrow();
    List<PartSpan> spans = PartSpan.of(plan, split);
    assertEquals(List.of(1, 3), split.firstPanels());
    assertEquals(0, spans.get(0).topPx());
    assertEquals((5402 + 6113) / 2.0, spans.get(0).bottomPx());
    assertEquals(spans.get(0).bottomPx(), spans.get(1).topPx());
    assertEquals(plan.heightPx(), spans.get(1).bottomPx());
    assertEquals(
        split.parts().get(1).heightPx() / plan.screens().screenPx(), spans.get(1).screens());
  }

  @Test
  void aSplitAskedForLaterIsThatOfThePlan() {
    SetEpisode set = Planned.set(SCRIPT);
    for (int parts = 2; parts < 5; parts++) {
      assertEquals(
          EpisodePlanner.plan(set, Optional.empty(), OptionalInt.of(parts)).split(),
          EpisodePlanner.split(set, plan(set), parts));
    }
    assertEquals(Optional.empty(), EpisodePlanner.split(set, plan(set), 4));
  }
}
