package io.github.readfall.window.export;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.job.Proofer;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.window.model.ExportModel;
import io.github.readfall.window.model.ModelThreads;
import java.awt.Window;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/** Opens the export dialog, after everything has been saved. */
public final class ExportAction {

  /** The proposed folder, next to the script. */
  private static final String FOLDER = "drawn";

  private final Window owner;
  private final Executor disk;
  private final Proofer proofer;
  private final ModelThreads threads = ModelThreads.real(SwingUtilities::invokeLater);
  private final Consumer<String> problems;
  private final Consumer<Throwable> fault;

  /**
   * An action that has opened no dialog yet.
   *
   * @param problems called on any thread with problems that the person can fix
   * @param fault called with errors of the program itself
   */
  public ExportAction(
      Window owner,
      Executor disk,
      Proofer proofer,
      Consumer<String> problems,
      Consumer<Throwable> fault) {
    this.owner = owner;
    this.disk = disk;
    this.proofer = proofer;
    this.problems = problems;
    this.fault = fault;
  }

  /**
   * Opens the dialog for an episode.
   *
   * @param language of its script
   */
  public void open(EpisodeFiles files, String language) {
    disk.execute(
        () -> {
          try {
            List<String> tags = new ArrayList<>(List.of(language));
            tags.addAll(files.languages());
            List<String> each = tags.stream().distinct().toList();
            SwingUtilities.invokeLater(() -> open(files, each));
          } catch (UnusablePath e) {
            problems.accept(String.valueOf(e.getMessage()));
          }
        });
  }

  private void open(EpisodeFiles files, List<String> tags) {
    Path to = files.script().resolveSibling(FOLDER);
    new ExportDialog(
            owner, tags, to, listener -> new ExportModel(files, proofer, threads, fault, listener))
        .setVisible(true);
  }
}
