package io.github.readfall.window.workplace;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.Surroundings;
import io.github.readfall.window.model.EpisodeModel;
import io.github.readfall.window.model.LayoutModel;
import io.github.readfall.window.parts.Notice;
import io.github.readfall.window.parts.NoticeBar;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/**
 * Opens, autosaves, saves and closes episodes, and asks in notices what the person must decide. It
 * alone knows which episode is open. Used on the event thread; disks are read and written on
 * another.
 */
public final class Workplace {

  private final EpisodeOpener opener;
  private final EpisodeModel model;
  private final NoticeBar notices;
  private final Executor disk;
  private final WorkPage page;
  private final LayoutModel strip;
  private final Saver saver;
  private final Saver layoutSaver;
  private final Recovery recovery;
  private final Recovery layoutRecovery;
  private final List<Consumer<OpenEpisode>> openedListeners = new ArrayList<>();
  private final List<Runnable> savedListeners = new ArrayList<>();
  private final List<Runnable> leavingListeners = new ArrayList<>();
  private final List<Consumer<Surroundings>> surroundingsListeners = new ArrayList<>();
  private Optional<OpenEpisode> opened = Optional.empty();

  /**
   * A workplace with nothing open.
   *
   * @param page of the script
   * @param strip with the layout
   */
  public Workplace(
      EpisodeOpener opener,
      EpisodeModel model,
      NoticeBar notices,
      Executor disk,
      WorkPage page,
      LayoutModel strip) {
    this.opener = opener;
    this.model = model;
    this.notices = notices;
    this.disk = disk;
    this.page = page;
    this.strip = strip;
    DiskWork kept = new DiskWork(disk, () -> opened.map(OpenEpisode::kept));
    DiskWork layout = new DiskWork(disk, () -> opened.map(OpenEpisode::layout));
    WorkPage layoutPage = new LayoutPage(strip, page);
    this.saver = new Saver("saving", kept, page, notices, this::savedChanged);
    this.layoutSaver = new Saver("savingLayout", layout, layoutPage, notices, this::savedChanged);
    this.recovery = new Recovery("recovered", kept, page, notices);
    this.layoutRecovery = new Recovery("recoveredLayout", layout, layoutPage, notices);
    strip.onChange(this::layoutChanged);
  }

  private void savedChanged() {
    savedListeners.forEach(Runnable::run);
  }

  /** Adds a listener for every episode that is opened. */
  public void onOpened(Consumer<OpenEpisode> listener) {
    openedListeners.add(listener);
  }

  /** Adds a listener for whenever the saved state may have changed. */
  public void onSaved(Runnable listener) {
    savedListeners.add(listener);
  }

  /** Adds a listener that runs before another episode is shown; the previous one is still open. */
  public void onLeaving(Runnable listener) {
    leavingListeners.add(listener);
  }

  /**
   * Adds a listener for the surroundings of the open script after another program has changed them.
   */
  public void onSurroundings(Consumer<Surroundings> listener) {
    surroundingsListeners.add(listener);
  }

  public Optional<OpenEpisode> opened() {
    return opened;
  }

  /** Whether something is not saved. */
  public boolean hasUnsaved() {
    return opened.filter(OpenEpisode::hasUnsaved).isPresent();
  }

  /** Opens a path, after unsaved changes have been saved or discarded. */
  public void open(Path path, Optional<Path> preferred) {
    if (!hasUnsaved() || opened.filter(o -> o.isAt(path)).isEmpty()) {
      leaveFor(() -> opener.at(path.toAbsolutePath(), preferred));
    }
  }

  /** Opens an episode, after unsaved changes have been saved or discarded. */
  public void open(EpisodeFiles files) {
    leaveFor(() -> opener.episode(files));
  }

  /** Closes the open episode only after the next has been read: if that fails, nothing is lost. */
  private void leaveFor(Reading next) {
    leave(() -> read(next, OpenEpisode::close), () -> read(next, OpenEpisode::closeAndDiscard));
  }

  /** A step that reads an episode. */
  private interface Reading {
    OpenEpisode read() throws UnusablePath;
  }

  private void read(Reading reading, Consumer<OpenEpisode> leaving) {
    disk.execute(
        () -> {
          try {
            OpenEpisode read = reading.read();
            SwingUtilities.invokeLater(() -> install(read, leaving));
          } catch (UnusablePath e) {
            showLater(Notice.of("opening", String.valueOf(e.getMessage())));
          }
        });
  }

  private void install(OpenEpisode next, Consumer<OpenEpisode> leaving) {
    if (opened.isPresent()) {
      leavingListeners.forEach(Runnable::run);
      leaving.accept(opened.get());
    }
    opened = Optional.of(next);
    notices.clear();
    String text = next.kept().openedText();
    page.open(text);
    strip.open(next.layout().openedText(), next.surroundings().laid());
    model.open(next.surroundings(), text);
    openedListeners.forEach(listener -> listener.accept(next));
    next.kept().remarks().forEach(remark -> notices.show(Notice.of("remark", remark)));
    next.layout().remarks().forEach(remark -> notices.show(Notice.of("remark.layout", remark)));
    recovery.offerNext();
    layoutRecovery.offerNext();
    savedChanged();
  }

  private void showLater(Notice notice) {
    SwingUtilities.invokeLater(() -> notices.show(notice));
  }

  /** Autosaves and shows another text of the script. */
  public void typed(String text) {
    opened.ifPresent(
        o -> {
          o.kept().changed(text);
          model.setText(text);
          savedChanged();
        });
  }

  /** Autosaves another layout. */
  private void layoutChanged(String json) {
    opened.ifPresent(
        o -> {
          o.layout().changed(json);
          savedChanged();
        });
  }

  /** Saves script and layout. */
  public void save() {
    save(() -> {});
  }

  private void save(Runnable then) {
    saver.save(() -> layoutSaver.save(then));
  }

  /** Runs an action after everything has been saved. */
  public void saved(Runnable then) {
    if (hasUnsaved()) {
      save(then);
    } else {
      then.run();
    }
  }

  /** Handles a change of the script file by another program. */
  public void changedOnDisk() {
    saver.changedOnDisk();
  }

  /** Handles a change of the layout file by another program. */
  public void layoutChangedOnDisk() {
    layoutSaver.useTheirsOrAsk();
  }

  /** Reads the surroundings again after another program has changed them. */
  public void surroundingsChanged() {
    opened.ifPresent(
        o ->
            disk.execute(
                () -> {
                  try {
                    Surroundings around = Surroundings.read(o.files(), opener.faces());
                    SwingUtilities.invokeLater(() -> surroundingsRead(o, around));
                  } catch (UnusablePath e) {
                    showLater(Notice.of("surroundings", String.valueOf(e.getMessage())));
                  }
                }));
  }

  private void surroundingsRead(OpenEpisode of, Surroundings around) {
    if (opened.filter(of::equals).isPresent()) {
      notices.close("surroundings");
      model.setSurroundings(around.withLaid(strip.readLayout()));
      surroundingsListeners.forEach(listener -> listener.accept(around));
    }
  }

  /** Runs an action that closes the episode, after unsaved changes have been saved or discarded. */
  public void leave(Runnable then) {
    leave(then, () -> discard(then));
  }

  private void leave(Runnable then, Runnable discarded) {
    if (!hasUnsaved()) {
      then.run();
      return;
    }
    notices.show(
        new Notice(
            "leaving",
            Wording.of("leaving.unsaved"),
            List.of(
                new Notice.Action(Wording.of("leaving.save"), () -> save(then)),
                new Notice.Action(Wording.of("leaving.keep"), then),
                new Notice.Action(Wording.of("leaving.discard"), discarded))));
  }

  private void discard(Runnable then) {
    opened.ifPresent(OpenEpisode::closeAndDiscard);
    opened = Optional.empty();
    then.run();
  }

  /** Closes the open episode; unsaved changes are offered when it is opened again. */
  public void close() {
    opened.ifPresent(OpenEpisode::close);
    opened = Optional.empty();
    model.clear();
  }
}
