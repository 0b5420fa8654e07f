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

  private final TestModels.Queue quick = new TestModels.Queue();
  private final TestModels.Queue thorough = new TestModels.Queue();
  private final TestModels.Queue later = new TestModels.Queue();
  private final List<EpisodeSnapshot> snapshots = new ArrayList<>();
  private final EpisodeModel model =
      new EpisodeModel(
          TestModels.proofer(),
          new ModelThreads(Runnable::run, quick::add, thorough::add, later::add),
          shown -> StripScene.empty(shown.text().length()));

  EpisodeModelTest() {
    model.onSnapshot(
        (shown, scene) -> {
          assertEquals(shown.text().length(), scene.widthPx());
          snapshots.add(shown);
        });
  }

  private void openAndSettle() {
    model.open(TestModels.bare(), SCRIPT);
    thorough.run();
    snapshots.clear();
  }

  @Test
  void anEpisodeThatIsOpenedIsShownAsCheckHasIt(@TempDir Path folder) throws Exception {
    Surroundings around = TestModels.at(folder.resolve("script.txt"), SCRIPT);
    model.open(around, SCRIPT);
    thorough.run();
    StripProof check = TestModels.proofer().check(around.files());
    EpisodeSnapshot shown = model.shown().orElseThrow();
    assertTrue(shown.isSettled());
    assertEquals(boxes(check.galley().balloons()), boxes(shown.galley().balloons()));
    assertTrue(shown.findings().containsAll(check.findings()));
    assertEquals(1, snapshots.size());
  }

  private static List<Box> boxes(List<PlacedBalloon> balloons) {
    return balloons.stream().map(PlacedBalloon::box).toList();
  }

  @Test
  void typingShowsTheNewWordsInTheOldPlaceAndThenTheSettledStrip() {
    openAndSettle();
    Box before = balloon("p1-1").box();
    model.setText(LONGER);
    quick.run();
    assertFalse(model.shown().orElseThrow().isSettled());
    assertEquals(before, balloon("p1-1").box());
    assertEquals("Listen to the wheel.", balloon("p2-1").cue().text().plain());
    later.run();
    thorough.run();
    assertTrue(model.shown().orElseThrow().isSettled());
    assertEquals(2, snapshots.size());
  }

  private PlacedBalloon balloon(String id) {
    return model.shown().orElseThrow().galley().balloons().stream()
        .filter(balloon -> balloon.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aStripThatHasBeenOvertakenIsNotShownAsSettled() {
    openAndSettle();
    model.setText(LONGER);
    quick.run();
    later.run();
    model.setText(SCRIPT.replace("Listen.", "Hush."));
    thorough.run(); // of the former words
    assertFalse(model.shown().orElseThrow().isSettled());
    quick.run();
    later.run();
    thorough.run();
    assertTrue(model.shown().orElseThrow().isSettled());
    assertEquals("Hush.", balloon("p2-1").cue().text().plain());
  }

  @Test
  void wordsOfAClosedEpisodeAreNotShown() {
    openAndSettle();
    model.setText(LONGER);
    model.open(TestModels.bare(), "PANEL 1\nILSE: Another.\n");
    quick.run();
    assertEquals(List.of(), snapshots);
    thorough.run();
    assertEquals("Another.", balloon("p1-1").cue().text().plain());
  }

  @Test
  void wordsTypedBeforeTheFirstStripIsThereAreShownWithIt() {
    model.open(TestModels.bare(), SCRIPT);
    model.setText(LONGER);
    thorough.run();
    assertEquals(1, snapshots.size());
    assertEquals("Listen to the wheel.", balloon("p2-1").cue().text().plain());
  }

  @Test
  void itIsSettledWhenTheWordsAsTheyAreNowAreChecked() {
    assertTrue(model.isSettled());
    openAndSettle();
    assertTrue(model.isSettled());
    model.setText(LONGER);
    assertFalse(model.isSettled());
    quick.run();
    assertFalse(model.isSettled());
    later.run();
    thorough.run();
    assertTrue(model.isSettled());
  }

  @Test
  void theSameWordsAreNoWork() {
    openAndSettle();
    model.setText(SCRIPT);
    assertEquals(0, quick.waiting() + later.waiting());
  }

  @Test
  void otherSurroundingsAreSettledAtOnce() {
    openAndSettle();
    model.setSurroundings(TestModels.bare());
    thorough.run();
    assertTrue(snapshots.get(0).isSettled());
  }

  @Test
  void anInternalErrorIsReported() {
    List<Throwable> faults = new ArrayList<>();
    IllegalStateException fault = new IllegalStateException("made up");
    EpisodeModel broken =
        new EpisodeModel(TestModels.proofer(), ModelThreads.none(), shown -> StripScene.empty(1));
    broken.onFault(faults::add);
    broken.onSnapshot(
        (shown, scene) -> {
          throw fault;
        });
    broken.open(TestModels.bare(), SCRIPT);
    assertSame(fault, faults.get(0));
  }

  @Test
  void thePlansFindingsAreShownToo(@TempDir Path folder) throws Exception {
    Path series = folder.resolve("series.toml");
    Files.writeString(series, "[delivery]\nmax-episode-height = 500\n");
    Surroundings around = TestModels.at(folder.resolve("script.txt"), SCRIPT);
    model.open(around, SCRIPT);
    thorough.run();
    Optional<Finding> tall =
        model.shown().orElseThrow().findings().stream()
            .filter(finding -> finding.rule().startsWith("plan/"))
            .findFirst();
    assertTrue(tall.isPresent());
  }

  @Test
  void whatIsDoneOneAfterTheOtherBeforeTheStripIsThereIsAllDone() {
    openAndSettle();
    LayoutModel work = new LayoutModel(model, step -> {}, sentence -> {});
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
