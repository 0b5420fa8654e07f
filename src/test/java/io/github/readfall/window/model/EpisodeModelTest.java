package io.github.readfall.window.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.Box;
import io.github.readfall.job.StripProof;
import io.github.readfall.series.Surroundings;
import io.github.readfall.strip.edits.StripEdit;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.window.canvas.StripScene;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EpisodeModelTest {

  private static final String SCRIPT =
      """
      Title: Ebb

      PANEL 1
      The mill.

      ILSE: It turns again.
      WOUTER: Leave it be.

      PANEL 2
      ILSE: Listen.
      """;

  private static final String LONGER = SCRIPT.replace("Listen.", "Listen to the wheel.");

  private final Desks.Queue quick = new Desks.Queue();
  private final Desks.Queue thorough = new Desks.Queue();
  private final Desks.Queue later = new Desks.Queue();
  private final List<EpisodeSnapshot> told = new ArrayList<>();
  private final EpisodeModel desk =
      new EpisodeModel(
          Desks.proofer(),
          new ModelThreads(Runnable::run, quick::add, thorough::add, later::add),
          shown -> StripScene.empty(shown.text().length()));

  EpisodeModelTest() {
    desk.onSnapshot(
        (shown, scene) -> {
          assertEquals(shown.text().length(), scene.widthPx());
          told.add(shown);
        });
  }

  private void openAndSettle() {
    desk.open(Desks.bare(), SCRIPT);
    thorough.run();
    told.clear();
  }

  @Test
  void anEpisodeThatIsOpenedIsShownAsCheckHasIt(@TempDir Path folder) throws Exception {
    Surroundings around = Desks.at(folder.resolve("script.txt"), SCRIPT);
    desk.open(around, SCRIPT);
    thorough.run();
    StripProof check = Desks.proofer().check(around.files());
    EpisodeSnapshot shown = desk.shown().orElseThrow();
    assertTrue(shown.isSettled());
    assertEquals(boxes(check.galley().balloons()), boxes(shown.galley().balloons()));
    assertTrue(shown.findings().containsAll(check.findings()));
    assertEquals(1, told.size());
  }

  private static List<Box> boxes(List<PlacedBalloon> balloons) {
    return balloons.stream().map(PlacedBalloon::box).toList();
  }

  @Test
  void whoTypesSeesTheNewWordsInTheOldPlaceAndThenTheSettledStrip() {
    openAndSettle();
    Box before = balloon("p1-1").box();
    desk.setText(LONGER);
    quick.run();
    assertFalse(desk.shown().orElseThrow().isSettled());
    assertEquals(before, balloon("p1-1").box());
    assertEquals("Listen to the wheel.", balloon("p2-1").cue().text().plain());
    later.run();
    thorough.run();
    assertTrue(desk.shown().orElseThrow().isSettled());
    assertEquals(2, told.size());
  }

  private PlacedBalloon balloon(String id) {
    return desk.shown().orElseThrow().galley().balloons().stream()
        .filter(balloon -> balloon.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aStripThatHasBeenOvertakenIsNotShownAsSettled() {
    openAndSettle();
    desk.setText(LONGER);
    quick.run();
    later.run();
    desk.setText(SCRIPT.replace("Listen.", "Hush."));
    thorough.run(); // of the words before
    assertFalse(desk.shown().orElseThrow().isSettled());
    quick.run();
    later.run();
    thorough.run();
    assertTrue(desk.shown().orElseThrow().isSettled());
    assertEquals("Hush.", balloon("p2-1").cue().text().plain());
  }

  @Test
  void wordsOfAnEpisodeThatWasPutAwayAreNotShown() {
    openAndSettle();
    desk.setText(LONGER);
    desk.open(Desks.bare(), "PANEL 1\nILSE: Another.\n");
    quick.run();
    assertEquals(List.of(), told);
    thorough.run();
    assertEquals("Another.", balloon("p1-1").cue().text().plain());
  }

  @Test
  void wordsTypedBeforeTheFirstStripIsThereAreShownWithIt() {
    desk.open(Desks.bare(), SCRIPT);
    desk.setText(LONGER);
    thorough.run();
    assertEquals(1, told.size());
    assertEquals("Listen to the wheel.", balloon("p2-1").cue().text().plain());
  }

  @Test
  void itIsSettledWhenTheWordsAsTheyAreNowAreChecked() {
    assertTrue(desk.isSettled());
    openAndSettle();
    assertTrue(desk.isSettled());
    desk.setText(LONGER);
    assertFalse(desk.isSettled());
    quick.run();
    assertFalse(desk.isSettled());
    later.run();
    thorough.run();
    assertTrue(desk.isSettled());
  }

  @Test
  void theSameWordsAreNoWork() {
    openAndSettle();
    desk.setText(SCRIPT);
    assertEquals(0, quick.waiting() + later.waiting());
  }

  @Test
  void otherSurroundingsAreSettledAtOnce() {
    openAndSettle();
    desk.setSurroundings(Desks.bare());
    thorough.run();
    assertTrue(told.get(0).isSettled());
  }

  @Test
  void aFaultOfOursIsTold() {
    List<Throwable> faults = new ArrayList<>();
    IllegalStateException fault = new IllegalStateException("made up");
    EpisodeModel broken =
        new EpisodeModel(Desks.proofer(), ModelThreads.none(), shown -> StripScene.empty(1));
    broken.onFault(faults::add);
    broken.onSnapshot(
        (shown, scene) -> {
          throw fault;
        });
    broken.open(Desks.bare(), SCRIPT);
    assertSame(fault, faults.get(0));
  }

  @Test
  void thePlansFindingsAreShownToo(@TempDir Path folder) throws Exception {
    Path series = folder.resolve("series.toml");
    Files.writeString(series, "[delivery]\nmax-episode-height = 500\n");
    Surroundings around = Desks.at(folder.resolve("script.txt"), SCRIPT);
    desk.open(around, SCRIPT);
    thorough.run();
    Optional<Finding> tall =
        desk.shown().orElseThrow().findings().stream()
            .filter(finding -> finding.rule().startsWith("plan/"))
            .findFirst();
    assertTrue(tall.isPresent());
  }

  @Test
  void whatIsDoneOneAfterTheOtherBeforeTheStripIsThereIsAllDone() {
    openAndSettle();
    LayoutModel work = new LayoutModel(desk, step -> {}, sentence -> {});
    double before = balloon("p1-1").box().x();
    StripEdit edit = new StripEdit.Move(Set.of("p1-1"), 10, 0);
    for (int i = 0; i < 3; i++) {
      work.edit("moving", "", edit);
    }
    for (int i = 0; i < 4; i++) {
      thorough.run();
    }
    assertEquals(before + 30, balloon("p1-1").box().x(), 0.01);
  }
}
