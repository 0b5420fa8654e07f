package io.github.readfall.app;

import io.github.readfall.keeping.KeptText;
import io.github.readfall.keeping.Saving;
import io.github.readfall.keeping.Taking;
import io.github.readfall.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/**
 * Saves a script or a layout, and asks where others have written it too or where it cannot be
 * written. What was to be done after saving is done whichever way it comes to be saved.
 */
final class Saver {

  private final String topic;
  private final OnDisk disk;
  private final Page page;
  private final NoticeBar notices;
  private final Runnable saved;

  /**
   * A saver.
   *
   * @param topic of its notices
   * @param saved is told whenever it may have changed whether everything is saved
   */
  Saver(String topic, OnDisk disk, Page page, NoticeBar notices, Runnable saved) {
    this.topic = topic;
    this.disk = disk;
    this.page = page;
    this.notices = notices;
    this.saved = saved;
  }

  /** Saves it, and then goes on. */
  void save(Runnable then) {
    String text = page.text();
    disk.run(kept -> kept.save(text), saving -> after(saving, then));
  }

  private void after(Saving saving, Runnable then) {
    if (saving instanceof Saving.Saved done) {
      notices.drop(topic);
      done.keptBeside()
          .ifPresent(file -> notices.tell(Notice.of("beside", Wording.of("saving.theirs", file))));
      saved.run();
      then.run();
    } else if (saving instanceof Saving.ChangedByOthers changed) {
      ask(changed.sentence(), changed.theirs().isPresent(), then);
    } else if (saving instanceof Saving.NotSaved not) {
      offerWayOn(not, then);
    }
  }

  /** The file was written by somebody else: takes theirs where nothing of ours is lost by it. */
  void takeOrAsk() {
    disk.run(
        kept -> kept.isChangedByOthers() && !kept.hasUnsaved(),
        takes -> {
          if (takes) {
            takeTheirs(() -> {});
          } else {
            changedOnDisk();
          }
        });
  }

  /** The file was written by somebody else: asks which is to stay. */
  void changedOnDisk() {
    disk.run(
        KeptText::isChangedByOthers,
        changed -> {
          if (changed) {
            disk.open()
                .get()
                .ifPresent(kept -> ask(Wording.of("saving.changed", kept.path()), true, () -> {}));
          }
        });
  }

  private void ask(String sentence, boolean canTake, Runnable then) {
    List<Notice.Way> ways = new ArrayList<>();
    ways.add(new Notice.Way(Wording.of("saving.keepMine"), () -> keepMine(then)));
    if (canTake) {
      ways.add(new Notice.Way(Wording.of("saving.takeTheirs"), () -> takeTheirs(then)));
    }
    notices.tell(new Notice(topic, sentence, ways));
  }

  private void keepMine(Runnable then) {
    String text = page.text();
    disk.run(kept -> kept.keepMine(text), saving -> after(saving, then));
  }

  private void takeTheirs(Runnable then) {
    String mine = page.text();
    disk.run(kept -> kept.takeTheirs(mine), taking -> taken(taking, then));
  }

  private void taken(Taking taking, Runnable then) {
    if (taking instanceof Taking.Taken taken) {
      page.replace(taken.text());
      taken
          .keptBeside()
          .ifPresent(file -> notices.tell(Notice.of("beside", Wording.of("saving.mine", file))));
      saved.run();
      then.run();
    } else if (taking instanceof Taking.NotTaken not) {
      notices.tell(Notice.of(topic, not.sentence()));
    }
  }

  private void offerWayOn(Saving.NotSaved not, Runnable then) {
    Notice.Way way =
        switch (not.wayOn()) {
          case WRITE_ANEW -> new Notice.Way(Wording.of("saving.anew"), () -> keepMine(then));
          case SAVE_ELSEWHERE -> new Notice.Way(Wording.of("saving.elsewhere"), this::saveCopy);
        };
    notices.tell(new Notice(topic, not.sentence(), List.of(way)));
  }

  private void saveCopy() {
    String text = page.text();
    page.copyTo()
        .ifPresent(
            path ->
                disk.run(kept -> KeptText.copyTo(path, text), saving -> after(saving, () -> {})));
  }
}
