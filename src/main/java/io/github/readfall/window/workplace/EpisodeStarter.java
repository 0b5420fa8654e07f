package io.github.readfall.window.workplace;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.NewEpisode;
import io.github.readfall.series.NewSeries;
import io.github.readfall.series.SampleSeries;
import io.github.readfall.window.parts.Notice;
import java.awt.Component;
import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javax.swing.JFileChooser;
import javax.swing.SwingUtilities;

/** Asks for something to open, or creates it. */
public final class EpisodeStarter {

  private final Component parent;
  private final Executor disk;
  private final Consumer<Path> open;
  private final Consumer<Notice> notices;
  private Optional<Path> lastFolder = Optional.empty();

  /**
   * A starter.
   *
   * @param parent of the file choosers
   * @param disk the thread that creates files
   * @param open opens the result
   * @param notices shows why something could not be created
   */
  public EpisodeStarter(
      Component parent, Executor disk, Consumer<Path> open, Consumer<Notice> notices) {
    this.parent = parent;
    this.disk = disk;
    this.open = open;
    this.notices = notices;
  }

  /** Lets the next file chooser begin in the folder of an episode. */
  public void setNeighbour(EpisodeFiles files) {
    Path script = files.script().toAbsolutePath();
    Path whole = files.seriesFolder().map(Path::toAbsolutePath).orElse(script);
    lastFolder = Optional.ofNullable(whole.getParent());
  }

  /** Asks for a script, an episode or a series, and opens it. */
  public void choose() {
    JFileChooser chooser = chooser("chooser.open", JFileChooser.FILES_AND_DIRECTORIES);
    chosen(chooser, chooser.showOpenDialog(parent)).ifPresent(open);
  }

  /** Asks for a folder, starts a series in it and opens that. */
  public void newSeries() {
    JFileChooser chooser = chooser("chooser.new", JFileChooser.DIRECTORIES_ONLY);
    chosen(chooser, chooser.showDialog(parent, Wording.of("chooser.here")))
        .ifPresent(
            folder ->
                make(
                    () -> {
                      NewSeries.in(folder);
                      return folder;
                    }));
  }

  /** Starts the next episode of a series, and opens it. */
  public void newEpisode(Path series) {
    make(() -> NewEpisode.in(series));
  }

  /**
   * Opens a copy of the sample, which the person may change freely.
   *
   * @param sample bundled with the program
   * @param copy folder of the copy
   */
  public void sample(Path sample, Path copy) {
    make(() -> SampleSeries.copied(sample, copy));
  }

  /** Asks for the path of a copy of the script. */
  Optional<Path> copyTo() {
    JFileChooser chooser = chooser("chooser.copy", JFileChooser.FILES_ONLY);
    chooser.setSelectedFile(new File("script.txt"));
    return chosen(chooser, chooser.showSaveDialog(parent));
  }

  private JFileChooser chooser(String title, int mode) {
    JFileChooser chooser = new JFileChooser();
    chooser.setName("chooser");
    chooser.setDialogTitle(Wording.of(title));
    chooser.setFileSelectionMode(mode);
    lastFolder.ifPresent(folder -> chooser.setCurrentDirectory(folder.toFile()));
    return chooser;
  }

  private Optional<Path> chosen(JFileChooser chooser, int answer) {
    if (answer != JFileChooser.APPROVE_OPTION || chooser.getSelectedFile() == null) {
      return Optional.empty();
    }
    lastFolder = Optional.of(chooser.getCurrentDirectory().toPath());
    return Optional.of(chooser.getSelectedFile().toPath());
  }

  /** A step that creates a path to be opened. */
  private interface Making {
    Path make() throws UnusablePath;
  }

  private void make(Making making) {
    disk.execute(
        () -> {
          try {
            Path made = making.make();
            SwingUtilities.invokeLater(() -> open.accept(made));
          } catch (UnusablePath e) {
            Notice notice = Notice.of("making", String.valueOf(e.getMessage()));
            SwingUtilities.invokeLater(() -> notices.accept(notice));
          }
        });
  }
}
