package io.github.readfall.window.workplace;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.series.autosave.OpenText;
import io.github.readfall.series.autosave.ReloadResult;
import io.github.readfall.series.autosave.SaveResult;
import io.github.readfall.window.parts.Notice;
import io.github.readfall.window.parts.NoticeBar;
import java.util.ArrayList;
import java.util.List;

/**
 * Saves a script or a layout, and asks what to do if another program has changed it or it cannot be
 * written. The action after saving runs however it comes to be saved.
 */
final class Saver {

  private final String topic;
  private final DiskWork disk;
  private final WorkPage page;
  private final NoticeBar notices;
  private final Runnable saved;

  /**
   * A saver.
   *
   * @param topic of its notices
   * @param saved called whenever the saved state may have changed
   */
  Saver(String topic, DiskWork disk, WorkPage page, NoticeBar notices, Runnable saved) {
    this.topic = topic;
    this.disk = disk;
    this.page = page;
    this.notices = notices;
    this.saved = saved;
  }

  /** Saves it, and then runs an action. */
  void save(Runnable then) {
    String text = page.text();
    disk.run(kept -> kept.save(text), saving -> after(saving, then));
  }

  private void after(SaveResult saving, Runnable then) {
    if (saving instanceof SaveResult.Saved done) {
      notices.close(topic);
      done.keptBeside()
          .ifPresent(file -> notices.show(Notice.of("beside", Wording.of("saving.theirs", file))));
      saved.run();
      then.run();
    } else if (saving instanceof SaveResult.ChangedByOthers changed) {
      ask(changed.sentence(), changed.theirs().isPresent(), then);
    } else if (saving instanceof SaveResult.NotSaved not) {
      offerActions(not, then);
    }
  }

  /**
   * Handles a change by another program: loads its version if nothing of ours is lost, else asks.
   */
  void useTheirsOrAsk() {
    disk.run(
        kept -> kept.isChangedByOthers() && !kept.hasUnsaved(),
        isSafe -> {
          if (isSafe) {
            useTheirs(() -> {});
          } else {
            changedOnDisk();
          }
        });
  }

  /** Handles a change by another program: asks which version to keep. */
  void changedOnDisk() {
    disk.run(
        OpenText::isChangedByOthers,
        changed -> {
          if (changed) {
            disk.open()
                .get()
                .ifPresent(kept -> ask(Wording.of("saving.changed", kept.path()), true, () -> {}));
          }
        });
  }

  private void ask(String sentence, boolean canTake, Runnable then) {
    List<Notice.Action> actions = new ArrayList<>();
    actions.add(new Notice.Action(Wording.of("saving.keepMine"), () -> keepMine(then)));
    if (canTake) {
      actions.add(new Notice.Action(Wording.of("saving.useTheirs"), () -> useTheirs(then)));
    }
    notices.show(new Notice(topic, sentence, actions));
  }

  private void keepMine(Runnable then) {
    String text = page.text();
    disk.run(kept -> kept.keepMine(text), saving -> after(saving, then));
  }

  private void useTheirs(Runnable then) {
    String mine = page.text();
    disk.run(kept -> kept.takeTheirs(mine), taking -> taken(taking, then));
  }

  private void taken(ReloadResult taking, Runnable then) {
    if (taking instanceof ReloadResult.Taken taken) {
      page.replace(taken.text());
      taken
          .keptBeside()
          .ifPresent(file -> notices.show(Notice.of("beside", Wording.of("saving.mine", file))));
      saved.run();
      then.run();
    } else if (taking instanceof ReloadResult.NotTaken not) {
      notices.show(Notice.of(topic, not.sentence()));
    }
  }

  private void offerActions(SaveResult.NotSaved not, Runnable then) {
    Notice.Action action =
        switch (not.wayOn()) {
          case WRITE_ANEW -> new Notice.Action(Wording.of("saving.again"), () -> keepMine(then));
          case SAVE_ELSEWHERE -> new Notice.Action(Wording.of("saving.copy"), this::saveCopy);
        };
    notices.show(new Notice(topic, not.sentence(), List.of(action)));
  }

  private void saveCopy() {
    String text = page.text();
    page.copyTo()
        .ifPresent(
            path ->
                disk.run(kept -> OpenText.copyTo(path, text), saving -> after(saving, () -> {})));
  }
}
