package io.github.readfall.series.autosave;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AutosaverTest {

  private final Path side;
  private final FakeLater later = new FakeLater();
  private final List<String> told = new ArrayList<>();
  private final Autosaver keeper;

  AutosaverTest(@TempDir Path folder) {
    side = folder.resolve("script.unsaved.txt");
    keeper =
        new Autosaver(
            new AutosaveFile(List.of(new AutosaveFile.Place(side, () -> {}))),
            "saved",
            later,
            told::add);
  }

  @Test
  void nothingIsWrittenBeforeAnythingIsTyped() {
    later.pass(10_000);
    assertFalse(Files.exists(side));
  }

  @Test
  void theNewestTextIsKeptWithinHalfASecondOfTheFirstChange() throws IOException {
    keeper.changed("saved a");
    later.pass(200);
    keeper.changed("saved ab");
    later.pass(300);
    assertEquals("saved ab", Files.readString(side));
  }

  @Test
  void typingWithoutAPauseDoesNotPutKeepingOff() throws IOException {
    for (int key = 1; key <= 200; key++) {
      keeper.changed("x".repeat(key));
      later.pass(30);
      if (key * 30 >= 500) {
        int kept = Files.readString(side).length();
        assertTrue((key - kept) * 30 <= 500, key + " typed, " + kept + " kept");
      }
    }
  }

  @Test
  void oneWaitIsEnoughForManyChanges() {
    for (int key = 0; key < 1000; key++) {
      keeper.changed("x" + key);
    }
    assertEquals(1, later.waiting());
  }

  @Test
  void theSideFileGoesWhenTheTextIsTypedBackToWhatIsSaved() {
    keeper.changed("saved!");
    later.pass(500);
    assertTrue(Files.exists(side));
    keeper.changed("saved");
    later.pass(500);
    assertFalse(Files.exists(side));
  }

  @Test
  void theSideFileGoesWithSavingUnlessMoreWasTyped() throws IOException {
    keeper.changed("one");
    later.pass(500);
    keeper.changed("one two");
    keeper.saved("one");
    assertEquals("one two", Files.readString(side));
    keeper.saved("one two");
    assertFalse(Files.exists(side));
    later.pass(5_000);
    assertFalse(Files.exists(side));
  }

  @Test
  void aFailureIsToldOnceAndTriedAgainUntilItWorks() throws IOException {
    Path inTheWay = Files.createDirectory(side);
    keeper.changed("typed");
    later.pass(10_000);
    keeper.changed("typed more");
    later.pass(10_000);
    assertEquals(1, told.size(), told::toString);
    assertTrue(told.get(0).contains(side.toString()), told.get(0));
    Files.delete(inTheWay);
    later.pass(1_500);
    assertEquals("typed more", Files.readString(side));
    Files.delete(side);
    Files.createDirectory(side);
    keeper.changed("typed yet more");
    later.pass(1_000);
    assertEquals(2, told.size(), "a new failure is told anew");
  }

  @Test
  void endingLeavesWhatIsNotSavedAndWritesNoMore() throws IOException {
    keeper.changed("typed");
    keeper.end();
    assertEquals("typed", Files.readString(side));
    Files.delete(side);
    keeper.changed("after the end");
    later.pass(5_000);
    assertFalse(Files.exists(side));
  }

  @Test
  void droppingLeavesNothing() {
    keeper.changed("typed");
    later.pass(500);
    keeper.endAndDrop();
    assertFalse(Files.exists(side));
  }

  @Test
  void theSecondPlaceIsTakenWhereTheFirstCannotBeWritten(@TempDir Path state) throws IOException {
    Path second = state.resolve("unsaved").resolve("script.unsaved.txt");
    Path first = side.resolveSibling("gone").resolve("script.unsaved.txt");
    AutosaveFile places =
        new AutosaveFile(
            List.of(
                new AutosaveFile.Place(first, () -> {}), new AutosaveFile.Place(second, () -> {})));
    Autosaver inState = new Autosaver(places, "saved", later, told::add);
    inState.changed("typed");
    later.pass(500);
    assertEquals("typed", Files.readString(second));
    Files.createDirectory(first.getParent());
    inState.changed("typed more");
    later.pass(500);
    assertEquals("typed more", Files.readString(first));
    assertFalse(Files.exists(second), "the older one is not left to be offered");
    assertEquals(List.of(), told);
  }
}
