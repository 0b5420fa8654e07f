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

/** Finds or makes something to open. */
public final class EpisodeStarter {

  private final Component parent;
  private final Executor disk;
  private final Consumer<Path> open;
  private final Consumer<Notice> notices;
  private Optional<Path> lastFolder = Optional.empty();

  /**
   * Ways to start.
   *
   * @param parent of the choosers
   * @param disk makes what is made
   * @param open opens it
   * @param notices tells why it could not be made
   */
  public EpisodeStarter(
      Component parent, Executor disk, Consumer<Path> open, Consumer<Notice> notices) {
    this.parent = parent;
    this.disk = disk;
    this.open = open;
    this.notices = notices;
  }

  /** Looks beside what is open when it is asked next. */
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
   * Opens a copy of the sample that the person may do anything with.
   *
   * @param sample that comes with the program
   * @param copy where it is to be
   */
  public void sample(Path sample, Path copy) {
    make(() -> SampleSeries.copied(sample, copy));
  }

  /** Asks where a copy of a script is to be written. */
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

  /** Something that makes what is then opened. */
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
