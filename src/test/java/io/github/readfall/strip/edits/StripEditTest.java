package io.github.readfall.strip.edits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.finding.Fix;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.strip.CueMark;
import io.github.readfall.strip.Extra;
import io.github.readfall.strip.KeepClear;
import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.Mouth;
import io.github.readfall.strip.Opening;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.json.LayoutReader;
import io.github.readfall.type.balloon.ShapeKind;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StripEditTest {

  /** Two panels, 200 px apart, the second with a balloon, a mouth and an area. */
  private static final Layout LAYOUT =
      new LayoutReader()
          .read(
              """
              {"readfall-layout": 1, "strip": {"widthPx": 1600, "heightPx": 3000},
               "panels": [{"panel": 1, "box": [100, 100, 1400, 1200]},
                          {"panel": 2, "box": [100, 1500, 1400, 1200]}],
               "keepClear": [{"box": [700, 1900, 200, 200], "what": "face", "by": "hand"}],
               "speakers": [{"panel": 2, "speaker": "ILSE", "mouth": [800, 2050]}],
               "balloons": [
                 {"id": "p1-1", "cue": {"panel": 1, "speaker": "ILSE", "text": "It turns."},
                  "box": [200, 200, 400, 200], "tailTo": [400, 900]},
                 {"id": "p1-2", "cue": {"panel": 1, "speaker": "WOUTER", "text": "Leave it."},
                  "box": [900, 600, 300, 240], "pinned": true},
                 {"id": "p2-1", "cue": {"panel": 2, "speaker": "ILSE", "text": "Listen."},
                  "box": [200, 1600, 320, 180], "tailTo": [790, 2040]}]}
              """)
          .layout()
          .orElseThrow();

  private static LaidBalloon balloon(Layout layout, String id) {
    return layout.balloon(id).orElseThrow();
  }

  private static Box box(Layout layout, String id) {
    return balloon(layout, id).box().orElseThrow();
  }

  private static Box panel(Layout layout, int number) {
    return layout.panel(number).map(PanelBox::box).orElseThrow();
  }

  @Test
  void balloonsThatAreMovedArePinnedAndKeepTheTipsOfTheirTails() {
    Layout moved = new StripEdit.Move(Set.of("p1-1"), 30, -12).in(LAYOUT);
    assertEquals(new Box(230, 188, 400, 200), box(moved, "p1-1"));
    assertEquals(List.of(new XY(400, 900)), balloon(moved, "p1-1").tailsTo());
    assertTrue(balloon(moved, "p1-1").pinned());
    assertEquals(balloon(LAYOUT, "p2-1"), balloon(moved, "p2-1"));
  }

  @Test
  void aBalloonThatIsSizedIsPinned() {
    Layout sized = new StripEdit.Size("p1-1", new Box(1, 2, 300, 400)).in(LAYOUT);
    assertEquals(new Box(1, 2, 300, 400), box(sized, "p1-1"));
    assertTrue(balloon(sized, "p1-1").pinned());
  }

  @Test
  void anOutlineIsGivenAndLeftToTheVoiceAgain() {
    Set<String> both = Set.of("p1-1", "p1-2");
    Layout burst = new StripEdit.Shape(both, Optional.of(ShapeKind.BURST)).in(LAYOUT);
    assertEquals(Optional.of(ShapeKind.BURST), balloon(burst, "p1-2").shape());
    assertEquals(LAYOUT, new StripEdit.Shape(both, Optional.empty()).in(burst));
  }

  @Test
  void whatIsPinnedCanBeLetGo() {
    Layout free = new StripEdit.Pin(Set.of("p1-2"), false).in(LAYOUT);
    assertFalse(balloon(free, "p1-2").pinned());
    assertEquals(LAYOUT, new StripEdit.Pin(Set.of("p1-2"), true).in(free));
  }

  @Test
  void aTailIsAimedAndLeftToBeWorkedOutAgain() {
    Layout aimed = new StripEdit.Aim("p1-2", 0, new XY(5, 6)).in(LAYOUT);
    assertEquals(List.of(new XY(5, 6)), balloon(aimed, "p1-2").tailsTo());
    assertEquals(LAYOUT, new StripEdit.FreeTails("p1-2").in(aimed));
  }

  /** The first balloon, said by two, with a tail to each. */
  private static Layout twoTails() {
    LaidBalloon balloon =
        balloon(LAYOUT, "p1-1")
            .of("p1-1", new CueMark(1, "Ilse & Wouter", "It turns."))
            .withTips(List.of(new XY(300, 900), new XY(500, 900)));
    return LAYOUT.withBalloons(List.of(balloon));
  }

  @Test
  void oneOfTwoTailsIsAimed() {
    Layout aimed = new StripEdit.Aim("p1-1", 1, new XY(600, 950)).in(twoTails());
    assertEquals(List.of(new XY(300, 900), new XY(600, 950)), balloon(aimed, "p1-1").tailsTo());
    Layout moved = new StripEdit.Move(Set.of("p1-1"), 10, 10).in(twoTails());
    assertEquals(balloon(twoTails(), "p1-1").tailsTo(), balloon(moved, "p1-1").tailsTo());
  }

  @Test
  void aMouthTakesTheTailOfItsSpeakerAlong() {
    Layout aimed =
        new StripEdit.PutMouth(new StripItem.Mouth(1, "WOUTER"), new XY(520, 1000)).in(twoTails());
    assertEquals(List.of(new XY(300, 900), new XY(520, 1000)), balloon(aimed, "p1-1").tailsTo());
  }

  @Test
  void aPanelThatMovesTakesAlongWhatIsInIt() {
    Layout moved = new StripEdit.PutPanel(2, new Box(140, 1600, 1400, 1200)).in(LAYOUT);
    assertEquals(new Box(240, 1700, 320, 180), box(moved, "p2-1"));
    assertEquals(List.of(new XY(830, 2140)), balloon(moved, "p2-1").tailsTo());
    assertEquals(new XY(840, 2150), moved.mouths().get(0).at());
    assertEquals(new Box(740, 2000, 200, 200), moved.keepClear().get(0).box());
    assertEquals(balloon(LAYOUT, "p1-1"), balloon(moved, "p1-1"));
    assertFalse(balloon(moved, "p2-1").pinned(), "who moves a panel pins nothing in it");
  }

  @Test
  void aPanelThatIsSizedLeavesWhatIsInItAndTheStripGrowsWithIt() {
    Layout sized = new StripEdit.PutPanel(2, new Box(100, 1500, 1400, 1900)).in(LAYOUT);
    assertEquals(box(LAYOUT, "p2-1"), box(sized, "p2-1"));
    assertEquals(3400, sized.heightPx());
  }

  @Test
  void aPanelWithoutABoxGetsOneInItsPlace() {
    Layout without = LAYOUT.withPanels(List.of(LAYOUT.panels().get(1)));
    Layout with = new StripEdit.PutPanel(1, new Box(1, 2, 3, 4)).in(without);
    assertEquals(List.of(1, 2), with.panels().stream().map(PanelBox::panel).toList());
  }

  @Test
  void areasComeMoveAndGoAndKeepWhatOthersWroteOfThem() {
    KeepClear one = new KeepClear(new Box(1, 2, 3, 4), "hand", Extra.NONE);
    Layout two = new StripEdit.AddArea(one).in(LAYOUT);
    assertEquals(one, two.keepClear().get(1));
    Layout put = new StripEdit.PutArea(0, new Box(9, 9, 9, 9)).in(two);
    assertEquals("face", put.keepClear().get(0).what());
    assertEquals(Map.of("by", "\"hand\""), put.keepClear().get(0).extra().jsonByKey());
    assertEquals(LAYOUT, new StripEdit.DropArea(1).in(two));
    assertEquals(LAYOUT, new StripEdit.DropArea(7).in(LAYOUT));
  }

  @Test
  void aMouthThatMovesTakesTheTailsThatEndedAtIt() {
    StripItem.Mouth ilse = new StripItem.Mouth(2, "Ilse");
    Layout moved = new StripEdit.PutMouth(ilse, new XY(900, 2100)).in(LAYOUT);
    assertEquals(new XY(900, 2100), moved.mouths().get(0).at());
    assertEquals(List.of(new XY(890, 2090)), balloon(moved, "p2-1").tailsTo());
    assertEquals(List.of(), new StripEdit.DropMouth(ilse).in(moved).mouths());
  }

  @Test
  void tailsAreAimedAtAMouthThatIsNew() {
    StripItem.Mouth ilse = new StripItem.Mouth(1, "ILSE");
    Layout known = new StripEdit.PutMouth(ilse, new XY(300, 800)).in(LAYOUT);
    assertEquals(List.of(new XY(300, 800)), balloon(known, "p1-1").tailsTo());
    assertEquals(List.of(), balloon(known, "p1-2").tailsTo());
    assertTrue(known.mouths().contains(new Mouth(1, "ILSE", new XY(300, 800), Extra.NONE)));
  }

  /** The gutter is 200 px; the last column is how far the second panel moves. */
  @ParameterizedTest
  @CsvSource({"50, 50", "-80, -80", "-200, -200", "-900, -200", "0.4, 0"})
  void aGutterIsOpenedAndClosedAsFarAsItGoes(double byPx, double moved) {
    Layout changed = new StripEdit.Gutter(2, byPx).in(LAYOUT);
    assertEquals(panel(LAYOUT, 2).movedBy(0, moved), panel(changed, 2));
    assertEquals(box(LAYOUT, "p2-1").movedBy(0, moved), box(changed, "p2-1"));
    assertEquals(panel(LAYOUT, 1), panel(changed, 1));
    assertEquals(3000 + moved, changed.heightPx());
    assertEquals(
        moved == 0 ? List.of() : List.of(new Opening(1500, moved)),
        changed.openings(),
        "whoever moves the art must know of it");
  }

  @Test
  void aMendThatAPersonAsksForMovesWhatIsPinnedToo() {
    Fix mend = new Fix.Move("p1-2", new XY(10, 20));
    assertEquals(new Box(10, 20, 300, 240), box(new StripEdit.Fixed(mend).in(LAYOUT), "p1-2"));
  }

  /** The first balloon is [200, 200, 400, 200], the second [900, 600, 300, 240]. */
  @ParameterizedTest
  @CsvSource({
    "LEFT, 200, 600, 300, 240",
    "CENTRE, 250, 600, 300, 240",
    "RIGHT, 300, 600, 300, 240",
    "TOP, 900, 200, 300, 240",
    "MIDDLE, 900, 180, 300, 240",
    "BOTTOM, 900, 160, 300, 240",
    "SAME_SIZE, 850, 600, 400, 240"
  })
  void balloonsAreBroughtIntoLineWithTheFirst(
      Alignment alignment, double x, double y, double width, double height) {
    Set<String> both = Set.of("p1-1", "p1-2");
    Layout lined = alignment.of(LAYOUT, both).in(LAYOUT);
    assertEquals(new Box(x, y, width, height), box(lined, "p1-2"));
    assertEquals(
        alignment == Alignment.SAME_SIZE ? new Box(200, 180, 400, 240) : box(LAYOUT, "p1-1"),
        box(lined, "p1-1"));
    assertEquals(lined, alignment.of(lined, both).in(lined), "once is enough");
  }

  @Test
  void whatIsNotThereChangesNothing() {
    List<StripEdit> edits =
        List.of(
            new StripEdit.Move(Set.of("p9-9"), 1, 1),
            new StripEdit.Size("p9-9", new Box(0, 0, 9, 9)),
            new StripEdit.Aim("p9-9", 0, new XY(0, 0)),
            new StripEdit.Gutter(9, 100),
            new StripEdit.DropMouth(new StripItem.Mouth(9, "ILSE")),
            new StripEdit.PutArea(9, new Box(0, 0, 1, 1)));
    assertEquals(LAYOUT, new StripEdit.Several(edits).in(LAYOUT));
  }
}
