package io.github.readfall.window.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.files.OutputFolder;
import io.github.readfall.export.Kind;
import io.github.readfall.export.Order;
import io.github.readfall.series.EpisodeFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExportModelTest {

  private static final Order TRANSCRIPT = new Order(Set.of(Kind.TRANSCRIPT), List.of());

  private final Path to;
  private final EpisodeFiles files;
  private final List<ExportProgress> progress = new ArrayList<>();
  private final ExportModel model;

  ExportModelTest(@TempDir Path folder) throws Exception {
    Path script = folder.resolve("ebb.txt");
    Files.writeString(script, "Title: Ebb\nCast: Ilse\n\nPANEL 1\n\nILSE: It turns again.\n");
    to = folder.resolve("drawn");
    files = EpisodeFiles.at(script).get(0);
    model = model(ModelThreads.none());
  }

  private ExportModel model(ModelThreads threads) {
    return new ExportModel(
        files, TestModels.proofer(), threads, ExportModelTest::fail, progress::add);
  }

  private static void fail(Throwable fault) {
    throw new AssertionError(fault);
  }

  private ExportProgress last() {
    return progress.get(progress.size() - 1);
  }

  @Test
  void filesAreNamedBeforeTheyAreMadeAndThenMade() throws Exception {
    model.ask(TRANSCRIPT, to);

    assertInstanceOf(ExportProgress.Preparing.class, progress.get(0));
    ExportProgress.Ready ready = assertInstanceOf(ExportProgress.Ready.class, last());
    assertFalse(ready.files().isEmpty());
    assertEquals(Set.of(), ready.taken());
    assertFalse(Files.exists(to));

    model.write(new OutputFolder(to, false));

    assertEquals(ready.files(), assertInstanceOf(ExportProgress.Written.class, last()).files());
    for (Path file : ready.files()) {
      assertTrue(Files.size(file) > 0, file.toString());
    }
  }

  @Test
  void whatIsThereAlreadyIsSaidAndStays() throws Exception {
    model.ask(TRANSCRIPT, to);
    Path first = assertInstanceOf(ExportProgress.Ready.class, last()).files().get(0);
    Files.createDirectories(to);
    Files.writeString(first, "mine");

    model.ask(TRANSCRIPT, to);
    assertEquals(Set.of(first), assertInstanceOf(ExportProgress.Ready.class, last()).taken());
    model.write(new OutputFolder(to, false));

    ExportProgress.Refused refused = assertInstanceOf(ExportProgress.Refused.class, last());
    assertTrue(refused.sentence().contains("already exists"), refused.sentence());
    assertEquals("mine", Files.readString(first));
  }

  @Test
  void aCancelledExportLeavesNothing() {
    List<Runnable> waiting = new ArrayList<>();
    ModelThreads slow = new ModelThreads(Runnable::run, Runnable::run, waiting::add, Runnable::run);
    ExportModel stopped = model(slow);
    stopped.ask(TRANSCRIPT, to);
    waiting.remove(0).run();
    stopped.write(new OutputFolder(to, false));

    stopped.stop();
    waiting.remove(0).run();

    assertInstanceOf(ExportProgress.Refused.class, last());
    assertFalse(Files.exists(to));
  }

  @Test
  void anEmptyOrderWritesNothing() {
    model.ask(new Order(Set.of(), List.of()), to);

    assertEquals(new ExportProgress.Idle(), last());
    model.write(new OutputFolder(to, false));
    assertEquals(1, progress.size());
  }

  @Test
  void aLanguageThatIsNotThereIsRefusedInASentence() {
    model.ask(new Order(Set.of(Kind.TRANSCRIPT), List.of("de")), to);

    ExportProgress.Refused refused = assertInstanceOf(ExportProgress.Refused.class, last());
    assertTrue(refused.sentence().startsWith("There is no translation de in "));
  }
}
