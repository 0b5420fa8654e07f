package io.github.readfall.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.script.Panel;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.galley.Chain;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PanelPlannerTest {

  private static final String LONG =
      "ILSE: The wheel has been counting since the spring, and nobody has asked it what for.\n\n";

  private static Layout plan(String script) {
    return PanelPlanner.plan(Planned.set(script));
  }

  private static Box box(Layout layout, int panel) {
    return layout.panel(panel).orElseThrow().box();
  }

  @Test
  void aPanelWithoutWordsIsAsTallAsItsShot() {
    Layout layout = plan("PANEL\n\nPANEL  extreme long shot\n\nPANEL  close-up, tall\n");
    assertEquals(1200, box(layout, 1).height());
    assertEquals(1760, box(layout, 2).height());
    assertEquals(1560, box(layout, 3).height());
  }

  @Test
  void theHeightAskedForIsGivenToThePixel() {
    assertEquals(1234, box(plan("PANEL  long shot, height 1234\n"), 1).height());
  }

  @Test
  void aPanelIsNeverLowerThanItsWordsNeed() {
    SetEpisode set = Planned.set("PANEL  height 300\n\nILSE: Now.\n\nOTTO: Now?\n");
    double heightPx = box(PanelPlanner.plan(set), 1).height();
    Spacing spacing = Spacing.of(set.style());
    double balloonsPx = set.balloons().stream().mapToDouble(b -> b.box().height()).sum();
    double airPx = 0.15 * 1472 + 2 * spacing.tailRoomPx();
    assertEquals(Math.ceil(balloonsPx + airPx), heightPx);
  }

  @Test
  void wordsCoverNoMoreThanHalfOfAPanel() {
    String speech = LONG.strip() + LONG.substring(LONG.indexOf(':') + 1).repeat(2);
    SetEpisode set = Planned.set("PANEL  height 300\n\n" + speech.replace("\n\n", "") + "\n");
    Box box = box(PanelPlanner.plan(set), 1);
    double coveredPx2 =
        set.balloons().stream().mapToDouble(b -> b.box().width() * b.box().height()).sum();
    assertEquals(0.5, coveredPx2 / (box.width() * box.height()), 0.001);
  }

  @Test
  void aCaptionDocksAtTheTopOfItsPanel() {
    SetEpisode set = Planned.set("PANEL  height 1\n\nCAPTION: It was spring.\n");
    Spacing spacing = Spacing.of(set.style());
    double captionPx = set.balloons().get(0).box().height();
    assertEquals(
        Math.ceil(captionPx + 2 * spacing.clearancePx()), box(PanelPlanner.plan(set), 1).height());
  }

  @Test
  void joinedPartnersStandCloser() {
    SetEpisode joined = Planned.set("PANEL  height 1\n\nILSE: One.\n\nILSE (joined): Two.\n");
    SetEpisode apart = Planned.set("PANEL  height 1\n\nILSE: One.\n\nILSE: Two.\n");
    Spacing spacing = Spacing.of(joined.style());
    double nearerPx =
        box(PanelPlanner.plan(apart), 1).height() - box(PanelPlanner.plan(joined), 1).height();
    assertEquals(spacing.tailRoomPx() - Chain.gapPx(joined.balloons().get(0)), nearerPx, 1);
  }

  @Test
  void guttersAreShortInAnExchangeAndLongBeforeAScene() {
    Layout layout =
        plan(
            """
            SCENE Mill

            PANEL

            ILSE: Now?

            PANEL

            SFX: TOK
            OTTO: Now.

            PANEL
            Nobody speaks.

            SCENE Harbour

            PANEL

            OTTO: Later.
            """);
    assertEquals(89, box(layout, 2).y() - box(layout, 1).bottom());
    assertEquals(213, box(layout, 3).y() - box(layout, 2).bottom());
    assertEquals(711, box(layout, 4).y() - box(layout, 3).bottom());
    assertEquals(213, box(layout, 1).y());
    assertEquals(213, layout.heightPx() - box(layout, 4).bottom());
  }

  @Test
  void aWidePanelRunsFromEdgeToEdgeAndOthersKeepTheSideMargin() {
    Layout layout = plan("PANEL  wide\n\nPANEL\n");
    assertEquals(new Box(0, 213, 1600, 960), box(layout, 1));
    assertEquals(64, box(layout, 2).x());
    assertEquals(1536, box(layout, 2).right());
  }

  @Test
  void panelsBesideOneAnotherShareTheWidth() {
    Layout layout = plan("PANEL\n\nPANEL  close-up, beside previous\n\nPANEL  beside previous\n");
    assertEquals(3, layout.panels().stream().map(p -> p.box().y()).filter(y -> y == 213).count());
    assertEquals(box(layout, 1).width(), box(layout, 3).width());
    assertEquals(89, box(layout, 2).x() - box(layout, 1).right());
    assertTrue(box(layout, 3).right() <= 1536 && box(layout, 3).right() > 1530);
  }

  @Test
  void inAStripReadFromTheRightTheFirstOfARowStandsOnTheRight() {
    String script = "PANEL\n\nPANEL  beside previous\n\nPANEL\n\nPANEL  inset\n";
    Layout layout = PanelPlanner.plan(Planned.set(script, "[strip]\nreads = 'rtl'"));
    assertTrue(box(layout, 2).right() < box(layout, 1).x());
    assertTrue(box(layout, 4).x() - box(layout, 3).x() < 60);
  }

  @Test
  void aPanelThatFindsNoRoomBesideTheOtherStandsBelow() {
    String words = "Everything that comes in on the water must go out again";
    String balloon = "ILSE: " + words + ", and then it must come in once more. " + words + ".\n\n";
    Layout layout = plan("PANEL\n\n" + balloon + "PANEL  beside previous\n\n" + balloon);
    assertTrue(box(layout, 2).y() > box(layout, 1).bottom());
    assertEquals(box(layout, 1).width(), box(layout, 2).width());
  }

  @Test
  void aNewSceneBeginsARowOfItsOwn() {
    Layout layout = plan("SCENE A\nPANEL\n\nSCENE B\nPANEL  beside previous\n\nPANEL  inset\n");
    assertTrue(box(layout, 2).y() > box(layout, 1).bottom());
    assertTrue(box(layout, 2).covers(box(layout, 3)));
  }

  @Test
  void theFirstPanelIsNoInset() {
    assertEquals(1472, box(plan("PANEL  inset\n"), 1).width());
  }

  @Test
  void aBoxKnowsWhatThePanelLineSaid() {
    Layout layout = plan("PANEL 9a  close-up, tall\n\nPANEL  medium shot\n\nPANEL\n");
    assertEquals(
        List.of("9a close-up, tall", "medium shot", ""),
        layout.panels().stream().map(PanelBox::heading).toList());
  }

  @Test
  void aScriptWithoutPanelsIsAnEmptyStrip() {
    assertEquals(213, plan("Title: Nothing yet\n").heightPx());
  }

  @ParameterizedTest
  @ValueSource(strings = {"ep01", "ep02"})
  void theSamplesHaveRoomForEveryWord(String episode) throws Exception {
    Path folder = Path.of("sample-scripts/overdue-tide");
    checkPlaces(
        Planned.set(
            Files.readString(folder.resolve(episode).resolve("script.txt")),
            Files.readString(folder.resolve("series.toml"))));
  }

  @ParameterizedTest
  @CsvSource({"1, ltr, 1600", "2, rtl, 800", "3, ltr, 1080", "4, rtl, 1600", "5, ltr, 690"})
  void anyScriptHasRoomForEveryWord(int seed, String reads, int widthPx) {
    String toml = "[strip]\nsafe-margin = 20\nreads = '" + reads + "'\nwidth = " + widthPx;
    checkPlaces(Planned.set(script(new SplittableRandom(seed)), toml));
  }

  private static String script(SplittableRandom random) {
    List<String> hints =
        List.of("", "long shot", "inset", "beside previous", "wide", "tall", "height 500", "inset");
    List<String> words = List.of("Now.", "It is counting again.", "Do not touch the wheel yet, he");
    StringBuilder script = new StringBuilder();
    for (int panel = 0; panel < 40; panel++) {
      script.append(random.nextInt(8) == 0 ? "SCENE Another\n\n" : "");
      script.append("PANEL  ").append(hints.get(random.nextInt(hints.size()))).append("\n\n");
      for (int cue = random.nextInt(4); cue > 0; cue--) {
        script.append(random.nextInt(4) == 0 ? "CAPTION: " : "ILSE: ");
        script.append(words.get(random.nextInt(words.size()))).append("\n\n");
      }
    }
    return script.toString();
  }

  /** Whole pixels, in order, apart or nested, on the strip, and with room for all balloons. */
  private static void checkPlaces(SetEpisode set) {
    Layout layout = PanelPlanner.plan(set);
    Spacing spacing = Spacing.of(set.style());
    List<PanelBox> panels = layout.panels();
    List<Panel> written = set.script().panels();
    assertEquals(written.stream().map(Panel::number).toList(), numbers(panels));
    for (int i = 0; i < panels.size(); i++) {
      Box box = panels.get(i).box();
      assertEquals(Math.rint(box.x() + box.y() + box.right() + box.bottom()), sum(box));
      assertTrue(new Box(0, 0, layout.widthPx(), layout.heightPx()).covers(box));
      int number = panels.get(i).panel();
      List<SetBalloon> own =
          set.balloons().stream().filter(b -> b.cue().panel() == number).toList();
      assertTrue(
          box.height() >= StackedHeight.neededPx(own, box.width(), spacing), "panel " + number);
      assertTrue(box.width() >= StackedHeight.neededWidthPx(own, spacing), "panel " + number);
      for (int j = 0; j < i; j++) {
        Box other = panels.get(j).box();
        if (written.get(i).hints().inset() && other.covers(box)) {
          checkNested(other, box, spacing, set, panels.get(j).panel());
        } else {
          assertFalse(other.meets(box), "panels " + (j + 1) + " and " + number);
        }
      }
    }
  }

  /** Clear of the frame's border, and below the frame's own words. */
  private static void checkNested(
      Box frame, Box inset, Spacing spacing, SetEpisode set, int panel) {
    assertTrue(frame.grownBy(1 - spacing.insetMarginPx()).covers(inset), frame + " " + inset);
    List<SetBalloon> own = set.balloons().stream().filter(b -> b.cue().panel() == panel).toList();
    double wordsEnd = frame.y() + StackedHeight.neededPx(own, frame.width(), spacing);
    assertTrue(inset.y() >= wordsEnd - 2, inset + " begins above " + wordsEnd);
  }

  private static List<Integer> numbers(List<PanelBox> panels) {
    return panels.stream().map(PanelBox::panel).toList();
  }

  private static double sum(Box box) {
    return box.x() + box.y() + box.right() + box.bottom();
  }
}
