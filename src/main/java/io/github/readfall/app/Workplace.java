package io.github.readfall.app;

import io.github.readfall.canvas.StripScene;
import io.github.readfall.desk.Desk;
import io.github.readfall.keeping.KeptScript;
import io.github.readfall.keeping.Recovered;
import io.github.readfall.keeping.Saving;
import io.github.readfall.keeping.Taking;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.Surroundings;
import io.github.readfall.series.UnusablePath;
import io.github.readfall.wording.Wording;
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
final class Workplace {

  private final Opener opener;
  private final Desk<StripScene> desk;
  private final NoticeBar notices;
  private final Executor disk;
  private final Page page;
  private final List<Consumer<Opened>> openedListeners = new ArrayList<>();
  private final List<Runnable> savedListeners = new ArrayList<>();
  private final List<Runnable> leavingListeners = new ArrayList<>();
  private final List<Consumer<Surroundings>> surroundedListeners = new ArrayList<>();
  private Optional<Opened> opened = Optional.empty();

  /** Where the script is written. */
  interface Page {
    /** Shows another script. */
    void open(String text);

    /** Shows other words of the same script, as one step that can be undone. */
    void replace(String text);

    String text();

    /** Asks for a file to write a copy to; empty where none is chosen. */
    Optional<Path> copyTo();
  }

  Workplace(Opener opener, Desk<StripScene> desk, NoticeBar notices, Executor disk, Page page) {
    this.opener = opener;
    this.desk = desk;
    this.notices = notices;
    this.disk = disk;
    this.page = page;
  }

  /** Tells of every episode that is opened. */
  void onOpened(Consumer<Opened> listener) {
    openedListeners.add(listener);
  }

  /** Tells whenever it may have changed whether everything is saved. */
  void onSaved(Runnable listener) {
    savedListeners.add(listener);
  }

  /** Tells when another episode is about to be shown in place of the one that still is. */
  void onLeaving(Runnable listener) {
    leavingListeners.add(listener);
  }

  /** Tells what surrounds the script that is open when others have changed it. */
  void onSurrounded(Consumer<Surroundings> listener) {
    surroundedListeners.add(listener);
  }

  Optional<Opened> opened() {
    return opened;
  }

  /** Whether something that was typed is not saved. */
  boolean hasUnsaved() {
    return opened.map(Opened::kept).filter(KeptScript::hasUnsaved).isPresent();
  }

  /** Opens what lies at a path, when what is open now is taken care of. */
  void open(Path path, Optional<Path> preferred) {
    if (!hasUnsaved() || opened.filter(o -> o.isAt(path)).isEmpty()) {
      leaveFor(() -> opener.at(path.toAbsolutePath(), preferred));
    }
  }

  /** Opens an episode, when what is open now is taken care of. */
  void open(EpisodeFiles files) {
    leaveFor(() -> opener.episode(files));
  }

  /** Leaves what is open only when the next is read: where it cannot be, nothing is lost. */
  private void leaveFor(Reading next) {
    leave(() -> read(next, KeptScript::close), () -> read(next, KeptScript::closeAndDrop));
  }

  /** Something read from disk. */
  private interface Reading {
    Opened read() throws UnusablePath;
  }

  private void read(Reading reading, Consumer<KeptScript> leaving) {
    disk.execute(
        () -> {
          try {
            Opened read = reading.read();
            SwingUtilities.invokeLater(() -> install(read, leaving));
          } catch (UnusablePath e) {
            tell(Notice.of("opening", String.valueOf(e.getMessage())));
          }
        });
  }

  private void install(Opened next, Consumer<KeptScript> leaving) {
    if (opened.isPresent()) {
      leavingListeners.forEach(Runnable::run);
      leaving.accept(opened.get().kept());
    }
    opened = Optional.of(next);
    notices.clear();
    String text = next.kept().openedText();
    page.open(text);
    desk.open(next.surroundings(), text);
    openedListeners.forEach(listener -> listener.accept(next));
    next.kept().remarks().forEach(remark -> notices.tell(Notice.of("remark", remark)));
    next.kept().recovered().stream().findFirst().ifPresent(this::offer);
    savedListeners.forEach(Runnable::run);
  }

  /** Offers what a window that fell had not saved. */
  private void offer(Recovered fallen) {
    notices.tell(
        new Notice(
            "recovered",
            Wording.of(fallen.scriptIsNewer() ? "recovered.older" : "recovered.offer"),
            List.of(
                new Notice.Way(Wording.of("recovered.adopt"), () -> adopt(fallen)),
                new Notice.Way(Wording.of("recovered.aside"), () -> setAside(fallen)),
                new Notice.Way(
                    Wording.of("recovered.drop"),
                    () -> onDisk(kept -> kept.drop(fallen), this::offerNext)))));
  }

  private void offerNext() {
    opened.flatMap(o -> o.kept().recovered().stream().findFirst()).ifPresent(this::offer);
  }

  private void adopt(Recovered fallen) {
    opened.ifPresent(
        o -> {
          String text = o.kept().adopt(fallen);
          page.replace(text);
        });
    offerNext();
  }

  private void setAside(Recovered fallen) {
    onDisk(
        kept -> {
          try {
            tell(Notice.of("aside", Wording.of("recovered.kept", kept.setAside(fallen))));
          } catch (UnusablePath e) {
            tell(Notice.of("aside", String.valueOf(e.getMessage())));
          }
        },
        this::offerNext);
  }

  private void onDisk(Consumer<KeptScript> work, Runnable then) {
    opened.ifPresent(
        o ->
            disk.execute(
                () -> {
                  work.accept(o.kept());
                  SwingUtilities.invokeLater(then);
                }));
  }

  private void tell(Notice notice) {
    SwingUtilities.invokeLater(() -> notices.tell(notice));
  }

  /** Other words have been typed. */
  void typed(String text) {
    opened.ifPresent(
        o -> {
          o.kept().changed(text);
          desk.typed(text);
          savedListeners.forEach(Runnable::run);
        });
  }

  /** Saves the script. */
  void save() {
    save(() -> {});
  }

  private void save(Runnable then) {
    String text = page.text();
    onKept(kept -> kept.save(text), then);
  }

  /** A way of saving. */
  private interface SavingWay {
    Saving save(KeptScript kept);
  }

  private void onKept(SavingWay way, Runnable then) {
    opened.ifPresent(
        o ->
            disk.execute(
                () -> {
                  Saving saving = way.save(o.kept());
                  SwingUtilities.invokeLater(() -> saved(saving, then));
                }));
  }

  private void saved(Saving saving, Runnable then) {
    if (saving instanceof Saving.Saved saved) {
      notices.drop("saving");
      saved
          .keptBeside()
          .ifPresent(file -> notices.tell(Notice.of("beside", Wording.of("saving.theirs", file))));
      savedListeners.forEach(Runnable::run);
      then.run();
    } else if (saving instanceof Saving.ChangedByOthers changed) {
      conflict(changed.sentence(), changed.theirs().isPresent());
    } else if (saving instanceof Saving.NotSaved not) {
      notSaved(not);
    }
  }

  /** Others have written the script, too. */
  private void conflict(String sentence, boolean canTake) {
    List<Notice.Way> ways = new ArrayList<>();
    ways.add(new Notice.Way(Wording.of("saving.keepMine"), this::keepMine));
    if (canTake) {
      ways.add(new Notice.Way(Wording.of("saving.takeTheirs"), this::takeTheirs));
    }
    notices.tell(new Notice("saving", sentence, ways));
  }

  private void keepMine() {
    String text = page.text();
    onKept(kept -> kept.keepMine(text), () -> {});
  }

  private void takeTheirs() {
    String mine = page.text();
    opened.ifPresent(
        o ->
            disk.execute(
                () -> {
                  Taking taking = o.kept().takeTheirs(mine);
                  SwingUtilities.invokeLater(() -> taken(taking));
                }));
  }

  private void taken(Taking taking) {
    if (taking instanceof Taking.Taken taken) {
      page.replace(taken.text());
      taken
          .keptBeside()
          .ifPresent(file -> notices.tell(Notice.of("beside", Wording.of("saving.mine", file))));
      savedListeners.forEach(Runnable::run);
    } else if (taking instanceof Taking.NotTaken not) {
      notices.tell(Notice.of("saving", not.sentence()));
    }
  }

  private void notSaved(Saving.NotSaved not) {
    Notice.Way way =
        switch (not.wayOn()) {
          case WRITE_ANEW -> new Notice.Way(Wording.of("saving.anew"), this::keepMine);
          case SAVE_ELSEWHERE -> new Notice.Way(Wording.of("saving.elsewhere"), this::saveCopy);
        };
    notices.tell(new Notice("saving", not.sentence(), List.of(way)));
  }

  private void saveCopy() {
    String text = page.text();
    page.copyTo().ifPresent(path -> onKept(kept -> KeptScript.copyTo(path, text), () -> {}));
  }

  /** The script's file was written by somebody else. */
  void changedOnDisk() {
    opened
        .filter(o -> o.kept().isChangedByOthers())
        .ifPresent(o -> conflict(Wording.of("saving.changed", o.files().script()), true));
  }

  /** What surrounds the script was written by somebody else. */
  void surroundingsChanged() {
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

  private void surroundedBy(Opened of, Surroundings around) {
    if (opened.filter(of::equals).isPresent()) {
      notices.drop("surroundings");
      desk.surroundedBy(around);
      surroundedListeners.forEach(listener -> listener.accept(around));
    }
  }

  /** Does something that leaves the episode, when what is not saved is taken care of. */
  void leave(Runnable then) {
    leave(then, () -> drop(then));
  }

  private void leave(Runnable then, Runnable dropped) {
    if (!hasUnsaved()) {
      then.run();
      return;
    }
    notices.tell(
        new Notice(
            "leaving",
            Wording.of("leaving.unsaved"),
            List.of(
                new Notice.Way(Wording.of("leaving.save"), () -> save(then)),
                new Notice.Way(Wording.of("leaving.keep"), then),
                new Notice.Way(Wording.of("leaving.drop"), dropped))));
  }

  private void drop(Runnable then) {
    opened.ifPresent(o -> o.kept().closeAndDrop());
    opened = Optional.empty();
    then.run();
  }

  /** Closes what is open; what is not saved is offered when it is opened again. */
  void close() {
    opened.ifPresent(o -> o.kept().close());
    opened = Optional.empty();
    desk.clear();
  }
}
