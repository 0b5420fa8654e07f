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
 * Opens, keeps, saves and leaves episodes, and tells in notices what the person must decide. The
 * one thing in the window that knows which episode is open. Used on the event thread; disks are
 * read and written on another.
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
   * Nothing is open.
   *
   * @param page where the script is written
   * @param strip where the layout is worked on
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
    this.saver = new Saver("saving", kept, page, notices, this::tellSaved);
    this.layoutSaver = new Saver("savingLayout", layout, layoutPage, notices, this::tellSaved);
    this.recovery = new Recovery("recovered", kept, page, notices);
    this.layoutRecovery = new Recovery("recoveredLayout", layout, layoutPage, notices);
    strip.onChange(this::laid);
  }

  private void tellSaved() {
    savedListeners.forEach(Runnable::run);
  }

  /** Tells of every episode that is opened. */
  public void onOpened(Consumer<OpenEpisode> listener) {
    openedListeners.add(listener);
  }

  /** Tells whenever it may have changed whether everything is saved. */
  public void onSaved(Runnable listener) {
    savedListeners.add(listener);
  }

  /** Tells when another episode is about to be shown in place of the one that still is. */
  public void onLeaving(Runnable listener) {
    leavingListeners.add(listener);
  }

  /** Tells what surrounds the script that is open when others have changed it. */
  public void onSurroundings(Consumer<Surroundings> listener) {
    surroundingsListeners.add(listener);
  }

  public Optional<OpenEpisode> opened() {
    return opened;
  }

  /** Whether something that was typed is not saved. */
  public boolean hasUnsaved() {
    return opened.filter(OpenEpisode::hasUnsaved).isPresent();
  }

  /** Opens what lies at a path, when what is open now is taken care of. */
  public void open(Path path, Optional<Path> preferred) {
    if (!hasUnsaved() || opened.filter(o -> o.isAt(path)).isEmpty()) {
      leaveFor(() -> opener.at(path.toAbsolutePath(), preferred));
    }
  }

  /** Opens an episode, when what is open now is taken care of. */
  public void open(EpisodeFiles files) {
    leaveFor(() -> opener.episode(files));
  }

  /** Leaves what is open only when the next is read: where it cannot be, nothing is lost. */
  private void leaveFor(Reading next) {
    leave(() -> read(next, OpenEpisode::close), () -> read(next, OpenEpisode::closeAndDrop));
  }

  /** Something read from disk. */
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
            tell(Notice.of("opening", String.valueOf(e.getMessage())));
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
    tellSaved();
  }

  private void tell(Notice notice) {
    SwingUtilities.invokeLater(() -> notices.show(notice));
  }

  /** Other words have been typed. */
  public void typed(String text) {
    opened.ifPresent(
        o -> {
          o.kept().changed(text);
          model.setText(text);
          tellSaved();
        });
  }

  /** The strip has been laid out in another way. */
  private void laid(String json) {
    opened.ifPresent(
        o -> {
          o.layout().changed(json);
          tellSaved();
        });
  }

  /** Saves script and layout. */
  public void save() {
    save(() -> {});
  }

  private void save(Runnable then) {
    saver.save(() -> layoutSaver.save(then));
  }

  /** Does something with the script as it is on disk, when what is typed is saved. */
  public void saved(Runnable then) {
    if (hasUnsaved()) {
      save(then);
    } else {
      then.run();
    }
  }

  /** The script's file was written by somebody else. */
  public void changedOnDisk() {
    saver.changedOnDisk();
  }

  /** The layout's file was written by somebody else. */
  public void layoutChangedOnDisk() {
    layoutSaver.takeOrAsk();
  }

  /** What surrounds the script was written by somebody else. */
  public void surroundingsChanged() {
    opened.ifPresent(
        o ->
            disk.execute(
                () -> {
                  try {
                    Surroundings around = Surroundings.read(o.files(), opener.faces());
                    SwingUtilities.invokeLater(() -> surroundedBy(o, around));
                  } catch (UnusablePath e) {
                    tell(Notice.of("surroundings", String.valueOf(e.getMessage())));
                  }
                }));
  }

  private void surroundedBy(OpenEpisode of, Surroundings around) {
    if (opened.filter(of::equals).isPresent()) {
      notices.close("surroundings");
      model.setSurroundings(around.withLaid(strip.readLayout()));
      surroundingsListeners.forEach(listener -> listener.accept(around));
    }
  }

  /** Does something that leaves the episode, when what is not saved is taken care of. */
  public void leave(Runnable then) {
    leave(then, () -> drop(then));
  }

  private void leave(Runnable then, Runnable dropped) {
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
                new Notice.Action(Wording.of("leaving.discard"), dropped))));
  }

  private void drop(Runnable then) {
    opened.ifPresent(OpenEpisode::closeAndDrop);
    opened = Optional.empty();
    then.run();
  }

  /** Closes what is open; what is not saved is offered when it is opened again. */
  public void close() {
    opened.ifPresent(OpenEpisode::close);
    opened = Optional.empty();
    model.clear();
  }
}
