package io.github.readfall.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Region;
import io.github.readfall.base.geom.XY;
import io.github.readfall.job.polyglot.SharedBalloons;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.Sample;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.plan.PanelPlanner;
import io.github.readfall.rules.RuleBook;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Script;
import io.github.readfall.script.read.ScriptReader;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.anchor.Anchoring;
import io.github.readfall.strip.galley.Compositor;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.strip.json.LayoutReader;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a person may rely on when a strip is placed. */
class StripMakerTest {

  private static final String EXCHANGE =
      """
      PANEL 1
      ILSE: It is counting again.
      WOUTER: Then let it count.

      PANEL 2
      WOUTER: Nobody had turned the wheel since spring.
      ILSE: Somebody did.
      WOUTER: Not I.
      """;

  private static Script script(String text) {
    return new ScriptReader().read(text, Keywords.ENGLISH).script();
  }

  private static Typesetter typesetter() {
    return new Typesetter(Sample.shelf(), HouseStyle.DEFAULT);
  }

  private static Layout layout(String json) {
    return new LayoutReader().read(json).layout().orElseThrow();
  }

  private static ComposedStrip placed(String text, String json, PlaceOptions wish) {
    Script script = script(text);
    Layout layout = layout(json);
    SetEpisode set = typesetter().set(script, Compositor.wanted(layout));
    return new StripMaker(typesetter(), script, SharedBalloons.NONE).placed(set, layout, wish);
  }

  private static List<String> errors(ComposedStrip composed) {
    return RuleBook.check(composed.galley()).stream()
        .filter(finding -> finding.severity() == Severity.ERROR)
        .map(finding -> finding.rule() + " " + finding.message())
        .toList();
  }

  private static PlacedBalloon balloon(ComposedStrip composed, String id) {
    return composed.galley().balloons().stream()
        .filter(b -> b.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aPanelWithoutRoomIsNamedWithTheRoomItLacks() {
    String low =
        "{'strip': {'widthPx': 1600, 'heightPx': 1150},'panels': [{'panel': 1, 'box': [64, 100,"
            + " 1472, 500]}, {'panel': 2, 'box': [64, 700, 1472, 400]}]}";
    String json = low.replace('\'', '"');
    ComposedStrip tight = placed(EXCHANGE, json, PlaceOptions.KEEP);
    assertEquals(List.of(2), tight.shortfalls().stream().map(s -> s.panel()).toList());
    ComposedStrip opened = placed(EXCHANGE, json, new PlaceOptions(true, false));
    assertEquals(List.of(), opened.shortfalls());
    assertEquals(List.of(), errors(opened));
    double byPx = opened.layout().openings().stream().mapToDouble(o -> o.byPx()).sum();
    assertEquals(1150 + byPx, opened.layout().heightPx(), 0.001);
    assertEquals(400, opened.layout().panels().get(1).box().height(), "no panel changes its size");
  }

  @Test
  void whatIsPinnedStaysWhateverItIsInTheWayOf() {
    Script script = script(EXCHANGE);
    SetEpisode set = typesetter().set(script);
    Layout plan = PanelPlanner.plan(set);
    Box top = plan.panels().get(0).box();
    String json =
        ("{'strip': {'widthPx': 1600, 'heightPx': "
                + plan.heightPx()
                + "}, 'panels': ["
                + "{'panel': 1, 'box': [64, "
                + top.y()
                + ", 1472, "
                + top.height()
                + "]}],"
                + "'balloons': [{'id': 'p1-1', 'box': [100, "
                + (top.y() + 150)
                + ", 600, 420],"
                + "'tailTo': [300, "
                + (top.y() + 650)
                + "], 'pinned': true}]}")
            .replace('\'', '"');
    for (PlaceOptions wish : List.of(PlaceOptions.KEEP, new PlaceOptions(false, true))) {
      ComposedStrip composed = placed(EXCHANGE, json, wish);
      Box box = balloon(composed, "p1-1").box();
      assertEquals(new Box(100, top.y() + 150, 600, 420), rounded(box));
      assertEquals(
          new XY(300, top.y() + 650), balloon(composed, "p1-1").tail().orElseThrow().tip());
    }
  }

  private static Box rounded(Box box) {
    return new Box(
        Math.rint(box.x() * 10) / 10,
        Math.rint(box.y() * 10) / 10,
        Math.rint(box.width() * 10) / 10,
        Math.rint(box.height() * 10) / 10);
  }

  /** Tails end 50 to 60 per cent of the way (N. Piekos, "Comic Book Grammar and Tradition"). */
  @ParameterizedTest
  @ValueSource(ints = {500, 800, 1100})
  void tailsPointAtMouthsAndLeaveThemClear(int mouthX) {
    String json =
        ("{'strip': {'widthPx': 1600, 'heightPx': 2400}, 'panels': ["
                + "{'panel': 1, 'box': [64, 100, 1472, 2000]}], 'speakers': ["
                + "{'panel': 1, 'speaker': 'ILSE', 'mouth': ["
                + mouthX
                + ", 1500]}],"
                + "'keepClear': [{'what': 'face', 'box': ["
                + (mouthX - 150)
                + ", 1300, 300, 330]}]}")
            .replace('\'', '"');
    ComposedStrip composed =
        placed("PANEL\n\nILSE: It is counting again.\n", json, PlaceOptions.KEEP);
    assertEquals(List.of(), errors(composed));
    PlacedBalloon balloon = balloon(composed, "p1-1");
    XY tip = balloon.tail().orElseThrow().tip();
    XY mouth = new XY(mouthX, 1500);
    double whole = balloon.body().distanceTo(Region.of(new Box(mouth.x(), mouth.y(), 0, 0)));
    double left = tip.distanceTo(mouth);
    assertTrue(balloon.box().bottom() < 1500, "the words stand above the mouth");
    assertTrue(left < whole, "the tail goes towards the mouth");
    assertFalse(new Box(mouthX - 150, 1300, 300, 330).covers(tip));
  }

  @Test
  void twoSpeakersOfABalloonHaveATailEach() {
    SetEpisode set =
        typesetter()
            .set(script("PANEL\n\nILSE: Well?\n\nOTTO: No.\n\nILSE & OTTO: There is nobody.\n"));
    ComposedStrip composed = StripMaker.asLaid(set, PanelPlanner.plan(set));
    PlacedBalloon both = balloon(composed, "p1-3");
    assertEquals(List.of("ILSE", "OTTO"), both.cue().speakers());
    assertEquals(2, both.tails().size());
    assertTrue(both.tails().get(0).tip().x() < both.tails().get(1).tip().x());
    assertEquals(List.of(), errors(composed));
  }

  @Test
  void eachOfTwoTailsPointsAtItsSpeakersMouth() {
    String json =
        """
        {"strip": {"widthPx": 1600, "heightPx": 2400},
         "panels": [{"panel": 1, "box": [64, 100, 1472, 2000]}],
         "speakers": [{"panel": 1, "speaker": "OTTO", "mouth": [450, 1500]},
                      {"panel": 1, "speaker": "ILSE", "mouth": [1150, 1500]}]}
        """;
    String cues = "PANEL\n\nILSE: Well?\n\nOTTO: No.\n\nILSE/OTTO: There is nobody.\n";
    PlacedBalloon both = balloon(placed(cues, json, PlaceOptions.KEEP), "p1-3");
    XY ilse = both.tails().get(0).tip();
    XY otto = both.tails().get(1).tip();
    assertTrue(ilse.distanceTo(new XY(1150, 1500)) < ilse.distanceTo(new XY(450, 1500)));
    assertTrue(otto.distanceTo(new XY(450, 1500)) < otto.distanceTo(new XY(1150, 1500)));
  }

  @Test
  void speakersOfAnExchangeKeepToTheirSides() {
    SetEpisode set = typesetter().set(script(EXCHANGE));
    ComposedStrip composed = StripMaker.asLaid(set, PanelPlanner.plan(set));
    for (PlacedBalloon balloon : composed.galley().balloons()) {
      double middle = balloon.tail().orElseThrow().tip().x();
      boolean left = middle < 800;
      assertEquals(balloon.cue().speaker().equals("ILSE"), left, balloon.id() + " at " + middle);
    }
  }

  @Test
  void aNewLineMovesNoOtherBalloon() {
    Script before = script(EXCHANGE);
    SetEpisode set = typesetter().set(before);
    ComposedStrip first = StripMaker.asLaid(set, PanelPlanner.plan(set).withHeadings(before));
    Script after = script(EXCHANGE.replace("Somebody did.", "Somebody did.\n\nMILA: Hm."));
    Layout anchored = Anchoring.of(first.layout(), after).layout();
    SetEpisode again = typesetter().set(after, Compositor.wanted(anchored));
    ComposedStrip second =
        new StripMaker(typesetter(), after, SharedBalloons.NONE)
            .placed(again, anchored, new PlaceOptions(true, false));
    assertEquals(6, second.galley().balloons().size());
    assertEquals(balloon(first, "p1-1").box(), balloon(second, "p1-1").box());
    assertEquals(balloon(first, "p1-2").box(), balloon(second, "p1-2").box());
    assertEquals(List.of(), errors(second));
  }

  @Test
  void aPanelThatTheScriptHasAndTheStripHasNotIsPutIn() {
    String json =
        ("{'strip': {'widthPx': 1600, 'heightPx': 1700}, 'panels': ["
                + "{'panel': 2, 'box': [64, 100, 1472, 1500]}]}")
            .replace('\'', '"');
    ComposedStrip opened = placed(EXCHANGE, json, new PlaceOptions(true, false));
    assertEquals(2, opened.layout().panels().size());
    Box first = opened.layout().panels().get(0).box();
    Box second = opened.layout().panels().get(1).box();
    assertTrue(first.bottom() < second.y(), first + " " + second);
    assertEquals(1500, second.height());
    assertEquals(5, opened.galley().balloons().size());
    assertEquals(List.of(), errors(opened));
  }
}
