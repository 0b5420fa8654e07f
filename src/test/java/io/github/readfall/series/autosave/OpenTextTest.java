package io.github.readfall.series.autosave;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.github.readfall.script.read.ScriptFileException;
import io.github.readfall.series.LayoutFile;
import io.github.readfall.series.autosave.ReloadResult.NotTaken;
import io.github.readfall.series.autosave.ReloadResult.Taken;
import io.github.readfall.series.autosave.SaveResult.ChangedByOthers;
import io.github.readfall.series.autosave.SaveResult.NotSaved;
import io.github.readfall.series.autosave.SaveResult.Saved;
import io.github.readfall.series.autosave.SaveResult.WayOn;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class OpenTextTest {

  private static final byte[] NO_TEXT = {'a', (byte) 0xC3, '('};

  private final Path folder;
  private final Path script;
  private final SideFileLocks claims;
  private final FakeLater later = new FakeLater();
  private final List<String> told = new ArrayList<>();

  OpenTextTest(@TempDir Path folder, @TempDir Path state) throws IOException {
    this.folder = folder;
    this.script = Files.writeString(folder.resolve("script.txt"), "first");
    this.claims = SideFileLocks.in(state);
  }

  @AfterEach
  void release() {
    claims.close();
  }

  private OpenText open() throws ScriptFileException {
    return OpenText.open(script, claims, later, told::add);
  }

  /** As if the program were killed: its claims are gone, its files are left. */
  private void fallen(String unsaved) throws IOException {
    Files.writeString(folder.resolve("script.unsaved.txt"), unsaved);
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  private Path beside(String name) {
    return folder.resolve(name);
  }

  static List<String> texts() {
    return List.of(
        "",
        "\n",
        "plain",
        "\uFEFFTitle: with a mark\n",
        "\uFEFF",
        "a\r\nb\r\n",
        "a\rb\nc\r\nd",
        "no end",
        "\u0000 and \u2028 and \u0085",
        "\uD83D\uDC19 \u05D0\u0644 \u4E00",
        "0123456789abcde\n".repeat(5 * 65_536));
  }

  @ParameterizedTest
  @MethodSource("texts")
  void aTextComesBackExactlyAsItWasSaved(String text) throws Exception {
    try (OpenText kept = open()) {
      assertInstanceOf(Saved.class, kept.save(text));
    }
    assertArrayEquals(text.getBytes(StandardCharsets.UTF_8), Files.readAllBytes(script));
    try (OpenText again = open()) {
      assertEquals(text, again.openedText());
      assertEquals(List.of(), again.recovered());
    }
    assertEquals(List.of("script.txt"), names());
  }

  @ParameterizedTest
  @MethodSource("texts")
  void aTextComesBackExactlyAfterAFall(String text) throws Exception {
    Files.writeString(script, "what was saved");
    OpenText killed = open();
    killed.changed(text);
    later.pass(500);
    claims.close();
    try (SideFileLocks next = SideFileLocks.in(claims.stateFolder());
        OpenText kept = OpenText.open(script, next, later, told::add)) {
      assertEquals(List.of(text), kept.recovered().stream().map(Recovered::text).toList());
      assertEquals("what was saved", kept.openedText());
    }
  }

  @Test
  void nothingIsRecoveredWhereNothingFell() throws Exception {
    try (OpenText kept = open()) {
      assertEquals(List.of(), kept.recovered());
      assertFalse(kept.hasUnsaved());
    }
  }

  @Test
  void aSideFileThatSaysTheSameIsTakenAway() throws Exception {
    fallen("first");
    try (OpenText kept = open()) {
      assertEquals(List.of(), kept.recovered());
    }
    assertEquals(List.of("script.txt"), names());
  }

  @ParameterizedTest
  @ValueSource(ints = {-3600, 3600})
  void aSideFileThatDiffersIsOfferedHoweverOldItIs(int seconds) throws Exception {
    fallen("second");
    long now = Files.getLastModifiedTime(script).toMillis();
    Files.setLastModifiedTime(
        beside("script.unsaved.txt"), FileTime.fromMillis(now + seconds * 1000L));
    try (OpenText kept = open()) {
      Recovered recovered = kept.recovered().get(0);
      assertEquals("second", recovered.text());
      assertEquals(seconds < 0, recovered.scriptIsNewer());
      kept.changed(kept.adopt(recovered) + " and third");
      SaveResult saving = kept.save("second and third");
      assertEquals(seconds < 0, saving instanceof ChangedByOthers, saving::toString);
    }
  }

  @Test
  void severalSideFilesAreOfferedNewestFirstAndNoneIsWrittenOver() throws Exception {
    fallen("second");
    Files.writeString(beside("script.unsaved-2.txt"), "third");
    Files.writeString(beside("script.unsaved-x.txt"), "not one of ours");
    long now = Files.getLastModifiedTime(script).toMillis();
    Files.setLastModifiedTime(beside("script.unsaved.txt"), FileTime.fromMillis(now - 5000));
    try (OpenText kept = open()) {
      assertEquals(
          List.of("third", "second"), kept.recovered().stream().map(Recovered::text).toList());
      kept.changed("fourth");
      later.pass(500);
      assertEquals("second", Files.readString(beside("script.unsaved.txt")));
      assertEquals("third", Files.readString(beside("script.unsaved-2.txt")));
      assertEquals("fourth", Files.readString(beside("script.unsaved-3.txt")));
    }
  }

  @Test
  void whatIsAdoptedIsKeptAnewBeforeItsFileGoes() throws Exception {
    fallen("second");
    OpenText kept = open();
    assertEquals("second", kept.adopt(kept.recovered().get(0)));
    assertTrue(kept.hasUnsaved());
    assertEquals(List.of("script.txt", "script.unsaved-2.txt"), names());
    assertEquals("second", Files.readString(beside("script.unsaved-2.txt")));
    assertInstanceOf(Saved.class, kept.save("second"));
    assertEquals(List.of("script.txt"), names());
    kept.close();
  }

  @Test
  void whatNobodyDecidedOnIsOfferedAgain() throws Exception {
    fallen("second");
    open().close();
    try (OpenText kept = open()) {
      assertEquals(1, kept.recovered().size());
      kept.setAside(kept.recovered().get(0));
      assertEquals(List.of(), kept.recovered());
    }
    assertEquals(List.of("script.recovered.txt", "script.txt"), names());
    assertEquals("second", Files.readString(beside("script.recovered.txt")));
  }

  @Test
  void whatIsDroppedIsGone() throws Exception {
    fallen("second");
    try (OpenText kept = open()) {
      kept.drop(kept.recovered().get(0));
    }
    assertEquals(List.of("script.txt"), names());
  }

  @Test
  void twoWindowsOnOneScriptKeepTheirOwn() throws Exception {
    try (OpenText one = open();
        OpenText other = open()) {
      one.changed("one");
      other.changed("other");
      later.pass(500);
      assertEquals("one", Files.readString(beside("script.unsaved.txt")));
      assertEquals("other", Files.readString(beside("script.unsaved-2.txt")));
      try (OpenText third = open()) {
        assertEquals(List.of(), third.recovered(), "the living are not offered");
      }
      assertInstanceOf(Saved.class, one.save("one"));
      assertInstanceOf(ChangedByOthers.class, other.save("other"));
      assertEquals("other", Files.readString(beside("script.unsaved-2.txt")));
    }
  }

  @Test
  void aSideFileThatIsNoTextIsLeftAndSaid() throws Exception {
    Files.write(beside("script.unsaved.txt"), NO_TEXT);
    try (OpenText kept = open()) {
      assertEquals(List.of(), kept.recovered());
      assertTrue(kept.remarks().get(0).contains("script.unsaved.txt is not UTF-8"));
      kept.save("second");
    }
    assertArrayEquals(NO_TEXT, Files.readAllBytes(beside("script.unsaved.txt")));
  }

  @Test
  void closingWithoutSavingKeepsWhatWasTyped() throws Exception {
    OpenText kept = open();
    kept.changed("second");
    kept.close();
    try (OpenText again = open()) {
      assertEquals("second", again.recovered().get(0).text());
    }
  }

  @Test
  void closingAndDroppingKeepsNothing() throws Exception {
    OpenText kept = open();
    kept.changed("second");
    later.pass(500);
    kept.closeAndDrop();
    assertEquals(List.of("script.txt"), names());
    assertEquals("first", Files.readString(script));
  }

  @Test
  void whatOthersWroteIsNeverSavedOver() throws Exception {
    try (OpenText kept = open()) {
      Files.writeString(script, "theirs");
      assertTrue(kept.isChangedByOthers());
      ChangedByOthers changed = assertInstanceOf(ChangedByOthers.class, kept.save("mine"));
      assertEquals(Optional.of("theirs"), changed.theirs());
      assertTrue(changed.sentence().contains(script.toString()), changed.sentence());
      assertEquals("theirs", Files.readString(script));
      assertEquals("mine", Files.readString(beside("script.unsaved.txt")));
    }
  }

  @Test
  void aChangeThatKeepsSizeAndTimeIsSeen() throws Exception {
    try (OpenText kept = open()) {
      FileTime at = Files.getLastModifiedTime(script);
      Files.writeString(script, "FIRST");
      Files.setLastModifiedTime(script, at);
      assertInstanceOf(ChangedByOthers.class, kept.save("mine"));
    }
  }

  @Test
  void aNewTimeAloneIsNoChange() throws Exception {
    try (OpenText kept = open()) {
      Files.setLastModifiedTime(script, FileTime.fromMillis(0));
      assertFalse(kept.isChangedByOthers());
      assertInstanceOf(Saved.class, kept.save("mine"));
    }
  }

  @Test
  void othersWhoWroteTheSameAreNoTrouble() throws Exception {
    try (OpenText kept = open()) {
      Files.writeString(script, "second");
      assertInstanceOf(Saved.class, kept.save("second"));
      assertInstanceOf(Saved.class, kept.save("third"));
    }
  }

  @Test
  void keepingMineKeepsTheirsBesideUnderANewNameEachTime() throws Exception {
    Files.writeString(beside("script.theirs.txt"), "somebody's own");
    try (OpenText kept = open()) {
      Files.writeString(script, "theirs");
      kept.save("mine");
      Saved saved = assertInstanceOf(Saved.class, kept.keepMine("mine"));
      assertEquals(Optional.of(beside("script.theirs-2.txt")), saved.keptBeside());
      assertEquals("mine", Files.readString(script));
      assertEquals("theirs", Files.readString(beside("script.theirs-2.txt")));
      assertEquals("somebody's own", Files.readString(beside("script.theirs.txt")));
      assertInstanceOf(Saved.class, kept.save("mine and more"));
    }
    assertEquals(List.of("script.theirs-2.txt", "script.theirs.txt", "script.txt"), names());
  }

  @Test
  void takingTheirsKeepsMineBeside() throws Exception {
    try (OpenText kept = open()) {
      kept.changed("mine");
      Files.writeString(script, "theirs");
      Taken taken = assertInstanceOf(Taken.class, kept.takeTheirs("mine"));
      assertEquals("theirs", taken.text());
      assertEquals(Optional.of(beside("script.mine.txt")), taken.keptBeside());
      assertEquals("mine", Files.readString(beside("script.mine.txt")));
      assertFalse(kept.hasUnsaved());
      assertFalse(kept.isChangedByOthers());
      assertInstanceOf(Saved.class, kept.save("theirs and more"));
    }
    assertEquals(List.of("script.mine.txt", "script.txt"), names());
  }

  @Test
  void takingTheirsLeavesNothingBesideWhereNothingWasUnsaved() throws Exception {
    try (OpenText kept = open()) {
      Files.writeString(script, "theirs");
      Taken taken = assertInstanceOf(Taken.class, kept.takeTheirs("first"));
      assertEquals(Optional.empty(), taken.keptBeside());
    }
    assertEquals(List.of("script.txt"), names());
  }

  @Test
  void theirsThatAreNoTextCanBeKeptButNotTaken() throws Exception {
    try (OpenText kept = open()) {
      Files.write(script, NO_TEXT);
      ChangedByOthers changed = assertInstanceOf(ChangedByOthers.class, kept.save("mine"));
      assertEquals(Optional.empty(), changed.theirs());
      NotTaken not = assertInstanceOf(NotTaken.class, kept.takeTheirs("mine"));
      assertTrue(not.sentence().contains("is not UTF-8"), not.sentence());
      assertInstanceOf(Saved.class, kept.keepMine("mine"));
    }
    assertArrayEquals(NO_TEXT, Files.readAllBytes(beside("script.theirs.txt")));
    assertEquals("mine", Files.readString(script));
  }

  @Test
  void aVanishedScriptIsNotMadeAnewUnasked() throws Exception {
    try (OpenText kept = open()) {
      Files.delete(script);
      NotSaved not = assertInstanceOf(NotSaved.class, kept.save("mine"));
      assertEquals(WayOn.WRITE_ANEW, not.wayOn());
      assertFalse(Files.exists(script));
      assertInstanceOf(Saved.class, kept.keepMine("mine"));
      assertEquals("mine", Files.readString(script));
    }
  }

  @Test
  void aVanishedFolderIsSaidAndWhatIsTypedIsKeptInTheStateFolder(@TempDir Path away)
      throws Exception {
    Path moved = away.resolve("moved");
    OpenText kept = open();
    Files.move(folder, moved);
    kept.changed("mine");
    later.pass(500);
    NotSaved not = assertInstanceOf(NotSaved.class, kept.save("mine"));
    assertEquals(WayOn.SAVE_ELSEWHERE, not.wayOn());
    assertTrue(not.sentence().contains("no longer exists"), not.sentence());
    assertInstanceOf(Saved.class, OpenText.copyTo(away.resolve("copy.txt"), "mine"));
    assertEquals("mine", Files.readString(away.resolve("copy.txt")));
    kept.close();
    Files.move(moved, folder);
    assertEquals(List.of(), told);
    try (OpenText again = open()) {
      assertEquals("mine", again.recovered().get(0).text());
    }
  }

  @Test
  void aCopyIsNotWrittenOverAnything() throws Exception {
    Path there = Files.writeString(beside("copy.txt"), "there");
    NotSaved not = assertInstanceOf(NotSaved.class, OpenText.copyTo(there, "mine"));
    assertTrue(not.sentence().contains("copy.txt"), not.sentence());
    assertEquals("there", Files.readString(there));
  }

  /** In /proc nobody may make a file, not even who may do everything elsewhere. */
  @Test
  void aFolderThatCannotBeWrittenHasItsSideFileInTheStateFolder() throws Exception {
    Path readOnly = Path.of("/proc/version");
    assumeTrue(Files.isReadable(readOnly), "there is a /proc on Linux only");
    OpenText kept = OpenText.open(readOnly, claims, later, told::add);
    kept.changed("mine");
    later.pass(500);
    assertInstanceOf(NotSaved.class, kept.save("mine"));
    kept.close();
    try (OpenText again = OpenText.open(readOnly, claims, later, told::add)) {
      Recovered recovered = again.recovered().get(0);
      assertEquals("mine", recovered.text());
      assertTrue(recovered.file().startsWith(claims.stateFolder()));
      again.drop(recovered);
    }
    assertEquals(List.of(), told);
  }

  @Test
  void whatIsReachedByALinkStaysALinkAndIsRecoveredByEitherName(@TempDir Path links)
      throws Exception {
    Path link = Files.createSymbolicLink(links.resolve("mine.txt"), script);
    OpenText kept = OpenText.open(link, claims, later, told::add);
    assertInstanceOf(Saved.class, kept.save("second"));
    kept.changed("third");
    kept.close();
    assertTrue(Files.isSymbolicLink(link));
    assertEquals("second", Files.readString(script));
    try (OpenText again = open()) {
      assertEquals("third", again.recovered().get(0).text());
    }
  }

  @Test
  void aScriptThatIsGonePointsToItsSideFile() throws Exception {
    fallen("second");
    Files.delete(script);
    ScriptFileException refusal = assertThrows(ScriptFileException.class, this::open);
    assertTrue(String.valueOf(refusal.getMessage()).contains("script.unsaved.txt"));
    assertEquals("second", Files.readString(beside("script.unsaved.txt")));
  }

  @Test
  void typingStaysUnsavedWhenItComesWhileSaving() throws Exception {
    try (OpenText kept = open()) {
      kept.save("second");
      kept.changed("second and more");
      assertTrue(kept.hasUnsaved());
      later.pass(500);
      assertEquals("second and more", Files.readString(beside("script.unsaved.txt")));
    }
  }

  @Test
  void whatIsTypedBeforeAnOlderTextIsSavedStaysUnsaved() throws Exception {
    try (OpenText kept = open()) {
      kept.changed("second");
      kept.changed("second and more");
      assertInstanceOf(Saved.class, kept.save("second"));
      assertTrue(kept.hasUnsaved());
      assertEquals("second", Files.readString(script));
      assertEquals("second and more", Files.readString(beside("script.unsaved.txt")));
      Files.writeString(script, "theirs");
      assertInstanceOf(Taken.class, kept.takeTheirs("second"));
      assertEquals("second and more", Files.readString(beside("script.mine.txt")));
    }
  }

  @Test
  void whatAKilledSavingLeftIsSweptAwayWhenItIsOld() throws Exception {
    Path old = Files.writeString(beside(".script.txt.123-1.part"), "half");
    Path young = Files.writeString(beside(".script.unsaved.txt.124-1.part"), "half");
    Path foreign = Files.writeString(beside(".other.txt.123-1.part"), "half");
    long longAgo = Files.getLastModifiedTime(script).toMillis() - 7_200_000;
    Files.setLastModifiedTime(old, FileTime.fromMillis(longAgo));
    Files.setLastModifiedTime(foreign, FileTime.fromMillis(longAgo));
    open().close();
    assertFalse(Files.exists(old));
    assertTrue(Files.exists(young) && Files.exists(foreign));
  }

  private OpenText openLayout() throws ScriptFileException {
    LayoutFile file = new LayoutFile(beside("layout.json"), beside("layout.previous.json"));
    return OpenText.open(file, claims, later, told::add);
  }

  @Test
  void aLayoutThatIsNotThereIsEmptyAndIsThereOnceItIsSaved() throws Exception {
    try (OpenText kept = openLayout()) {
      assertEquals("", kept.openedText());
      assertInstanceOf(Saved.class, kept.save(""));
      assertEquals(List.of("script.txt"), names());
      assertInstanceOf(Saved.class, kept.save("{one}"));
      assertEquals("{one}", Files.readString(beside("layout.json")));
      assertFalse(kept.isChangedByOthers());
    }
  }

  @Test
  void theLayoutBeforeIsKeptAndAnEmptyOneIsTakenAway() throws Exception {
    Files.writeString(beside("layout.json"), "{one}");
    try (OpenText kept = openLayout()) {
      assertInstanceOf(Saved.class, kept.save("{two}"));
      assertEquals("{one}", Files.readString(beside("layout.previous.json")));
      assertInstanceOf(Saved.class, kept.save(""));
      assertFalse(Files.exists(beside("layout.json")));
      assertEquals("{two}", Files.readString(beside("layout.previous.json")));
      assertFalse(kept.isChangedByOthers());
    }
  }

  @Test
  void aLayoutThatOthersWroteMeanwhileIsNotWrittenOver() throws Exception {
    try (OpenText kept = openLayout()) {
      Files.writeString(beside("layout.json"), "{theirs}");
      assertTrue(kept.isChangedByOthers());
      assertInstanceOf(ChangedByOthers.class, kept.save("{mine}"));
      assertEquals("{theirs}", Files.readString(beside("layout.json")));
      assertInstanceOf(Saved.class, kept.keepMine("{mine}"));
      assertEquals("{mine}", Files.readString(beside("layout.json")));
      assertEquals("{theirs}", Files.readString(beside("layout.theirs.json")));
    }
  }

  @Test
  void aLayoutThatOthersTookAwayCanBeTakenToBeNone() throws Exception {
    Files.writeString(beside("layout.json"), "{one}");
    try (OpenText kept = openLayout()) {
      Files.delete(beside("layout.json"));
      assertTrue(kept.isChangedByOthers());
      assertEquals("", assertInstanceOf(Taken.class, kept.takeTheirs("{one}")).text());
      assertFalse(kept.isChangedByOthers());
    }
  }

  @Test
  void whatWasMovedIsOfferedAfterAFallAlsoWhereThereWasNoLayout() throws Exception {
    OpenText killed = openLayout();
    killed.changed("{moved}");
    later.pass(500);
    claims.close();
    try (OpenText kept = openLayout()) {
      assertEquals(List.of("{moved}"), kept.recovered().stream().map(Recovered::text).toList());
      assertEquals("{moved}", kept.adopt(kept.recovered().get(0)));
      assertTrue(kept.hasUnsaved());
    }
  }
}
