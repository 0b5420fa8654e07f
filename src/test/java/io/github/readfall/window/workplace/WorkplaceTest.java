package io.github.readfall.window.workplace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.job.Proofer;
import io.github.readfall.series.autosave.BackgroundThread;
import io.github.readfall.series.autosave.OpenText;
import io.github.readfall.series.autosave.SideFileLocks;
import io.github.readfall.strip.edits.StripEdit;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.font.OpenFaces;
import io.github.readfall.window.canvas.StripScene;
import io.github.readfall.window.model.EpisodeModel;
import io.github.readfall.window.model.LayoutModel;
import io.github.readfall.window.model.ModelThreads;
import io.github.readfall.window.parts.Notice;
import io.github.readfall.window.parts.NoticeBar;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Opening, saving and leaving episodes, without a display. */
class WorkplaceTest {

  private static final String SCRIPT = "PANEL 1\nILSE: It turns.\n";

  private final Path folder;
  private final Path script;
  private final SideFileLocks claims;
  private final BackgroundThread later = new BackgroundThread("test");
  private final NoticeBar notices = new NoticeBar();
  private final Paper paper = new Paper();
  private final LayoutModel strip;
  private final List<String> refused = new ArrayList<>();
  private final Workplace workplace;
  private final List<Path> opened = new ArrayList<>();

  WorkplaceTest(@TempDir Path folder) throws Exception {
    this.folder = folder;
    script = Files.writeString(folder.resolve("script.txt"), SCRIPT);
    claims = SideFileLocks.in(folder.resolve("state"));
    FontShelf faces = OpenFaces.shelf();
    EpisodeModel model =
        new EpisodeModel(
            new Proofer(faces, () -> 0), ModelThreads.none(), shown -> StripScene.empty(1));
    EpisodeOpener opener = new EpisodeOpener(faces, claims, later, sentence -> {});
    strip = new LayoutModel(model, step -> {}, refused::add);
    workplace = new Workplace(opener, model, notices, Runnable::run, paper, strip);
    workplace.onOpened(one -> opened.add(one.files().script()));
  }

  @AfterEach
  void close() throws Exception {
    onEvents(workplace::close);
    later.close();
    claims.close();
  }

  /** A page without an editor. */
  private static final class Paper implements WorkPage {

    private String text = "";

    @Override
    public void open(String other) {
      text = other;
    }

    @Override
    public void replace(String other) {
      text = other;
    }

    @Override
    public String text() {
      return text;
    }

    @Override
    public Optional<Path> copyTo() {
      return Optional.empty();
    }
  }

  /** Does something on the thread of the window, and all that follows from it there. */
  private static void onEvents(Runnable work) throws Exception {
    SwingUtilities.invokeAndWait(work);
    for (int i = 0; i < 3; i++) {
      SwingUtilities.invokeAndWait(() -> {});
    }
  }

  private void open(Path path) throws Exception {
    onEvents(() -> workplace.open(path, Optional.empty()));
  }

  private void type(String text) throws Exception {
    onEvents(
        () -> {
          paper.text = text;
          workplace.typed(text);
        });
  }

  private List<String> topics() {
    return notices.notices().stream().map(Notice::topic).toList();
  }

  /** Goes a way that a notice offers. */
  private void go(String topic, int way) throws Exception {
    Notice notice =
        notices.notices().stream().filter(n -> n.topic().equals(topic)).findFirst().orElseThrow();
    onEvents(notice.actions().get(way).action());
  }

  @Test
  void aPathThatCannotBeOpenedIsReportedAndTheEpisodeStaysOpen() throws Exception {
    open(script);
    open(folder.resolve("nowhere"));
    assertEquals(List.of("opening"), topics());
    assertEquals(List.of(script), opened);
    assertEquals(SCRIPT, paper.text);
  }

  @Test
  void typedTextIsUnsavedUntilItIsSaved() throws Exception {
    open(script);
    assertFalse(workplace.hasUnsaved());
    type(SCRIPT + "ILSE: Listen.\n");
    assertTrue(workplace.hasUnsaved());
    onEvents(workplace::save);
    assertFalse(workplace.hasUnsaved());
    assertEquals(SCRIPT + "ILSE: Listen.\n", Files.readString(script));
    assertEquals(List.of(), topics());
  }

  @Test
  void closingWithUnsavedTextAsksFirst() throws Exception {
    open(script);
    type(SCRIPT + "ILSE: Listen.\n");
    List<String> left = new ArrayList<>();
    onEvents(() -> workplace.leave(() -> left.add("left")));
    assertEquals(List.of(), left);
    assertEquals(List.of("leaving"), topics());
    go("leaving", 0);
    assertEquals(List.of("left"), left);
    assertEquals(SCRIPT + "ILSE: Listen.\n", Files.readString(script));
  }

  @Test
  void closingGoesOnAfterKeepMine() throws Exception {
    open(script);
    type(SCRIPT + "ILSE: Mine.\n");
    Files.writeString(script, SCRIPT + "ILSE: Theirs.\n");
    List<String> left = new ArrayList<>();
    onEvents(() -> workplace.leave(() -> left.add("left")));
    go("leaving", 0);
    assertEquals(List.of(), left);
    go("saving", 0);
    assertEquals(List.of("left"), left);
    assertEquals(SCRIPT + "ILSE: Mine.\n", Files.readString(script));
  }

  @Test
  void discardedTextIsNotOfferedAgain() throws Exception {
    open(script);
    type(SCRIPT + "ILSE: Listen.\n");
    onEvents(() -> workplace.leave(() -> {}));
    go("leaving", 2);
    open(script);
    assertEquals(List.of(), topics());
    assertEquals(SCRIPT, paper.text);
  }

  @Test
  void unsavedTextOfACrashedWindowIsOffered() throws Exception {
    OpenText crashed = OpenText.open(script, claims, later, sentence -> {});
    crashed.changed(SCRIPT + "ILSE: Listen.\n");
    crashed.close(); // leaves what was not saved, as a crash does
    open(script);
    assertEquals(List.of("recovered"), topics());
    go("recovered", 0);
    assertEquals(SCRIPT + "ILSE: Listen.\n", paper.text);
    assertEquals(SCRIPT, Files.readString(script));
  }

  @Test
  void theirVersionCanBeUsedAndMineIsKeptBeside() throws Exception {
    open(script);
    type(SCRIPT + "ILSE: Mine.\n");
    Files.writeString(script, SCRIPT + "ILSE: Theirs.\n");
    onEvents(workplace::save);
    assertEquals(List.of("saving"), topics());
    go("saving", 1);
    assertEquals(SCRIPT + "ILSE: Theirs.\n", paper.text);
    String mine = Files.readString(folder.resolve("script.mine.txt"), StandardCharsets.UTF_8);
    assertEquals(SCRIPT + "ILSE: Mine.\n", mine);
  }

  @Test
  void aFileChangedByOthersIsReportedBeforeItIsSaved() throws Exception {
    open(script);
    Files.writeString(script, SCRIPT + "ILSE: Theirs.\n");
    onEvents(workplace::changedOnDisk);
    assertEquals(List.of("saving"), topics());
  }

  private void moveFirst() throws Exception {
    onEvents(() -> strip.edit("moving", "", new StripEdit.Move(Set.of("p1-1"), 10, 20)));
  }

  private Path layout() {
    return script.resolveSibling("layout.json");
  }

  @Test
  void movesAreUnsavedUntilTheyAreSavedWithTheScript() throws Exception {
    open(script);
    moveFirst();
    assertTrue(workplace.hasUnsaved());
    assertFalse(Files.exists(layout()));
    onEvents(workplace::save);
    assertFalse(workplace.hasUnsaved());
    assertEquals(strip.text(), Files.readString(layout()));
    assertTrue(strip.text().contains("\"pinned\": true"));
    assertEquals(SCRIPT, Files.readString(script));
  }

  @Test
  void aLayoutChangedByOthersIsLoadedIfNothingWasMoved() throws Exception {
    open(script);
    moveFirst();
    onEvents(workplace::save);
    String theirs = strip.text().replace("\"pinned\": true", "\"pinned\": false");
    Files.writeString(layout(), theirs);
    onEvents(workplace::layoutChangedOnDisk);
    assertEquals(theirs, strip.text());
    assertFalse(workplace.hasUnsaved());
    assertEquals(List.of(), topics());
  }

  @Test
  void aLayoutChangedByOthersIsAskedAboutIfSomethingWasMoved() throws Exception {
    open(script);
    moveFirst();
    String mine = strip.text();
    Files.writeString(layout(), mine.replace("\"pinned\": true", "\"pinned\": false"));
    onEvents(workplace::layoutChangedOnDisk);
    assertEquals(List.of("savingLayout"), topics());
    assertEquals(mine, strip.text());
    go("savingLayout", 0);
    assertEquals(mine, Files.readString(layout()));
  }

  @Test
  void unsavedMovesAreOfferedWhenTheEpisodeIsOpenedAgain() throws Exception {
    open(script);
    moveFirst();
    String moved = strip.text();
    onEvents(workplace::close);
    open(script);
    assertEquals(List.of("recoveredLayout"), topics());
    assertEquals("", strip.text());
    go("recoveredLayout", 0);
    assertEquals(moved, strip.text());
    assertTrue(workplace.hasUnsaved());
  }

  @Test
  void aLayoutThatWouldLoseSomethingIsNotChanged() throws Exception {
    String broken =
        "{\"strip\": {\"widthPx\": 1600, \"heightPx\": 900}, \"panels\": [{\"panel\": 1}]}";
    Files.writeString(layout(), broken);
    open(script);
    moveFirst();
    assertEquals(broken, strip.text());
    assertFalse(workplace.hasUnsaved());
    assertEquals(1, refused.size(), () -> "" + refused);
  }
}
