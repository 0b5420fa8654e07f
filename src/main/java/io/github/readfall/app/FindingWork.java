package io.github.readfall.app;

import io.github.readfall.canvas.StripScene;
import io.github.readfall.desk.Desk;
import io.github.readfall.desk.StripWork;
import io.github.readfall.edits.StripEdit;
import io.github.readfall.finding.Mend;
import io.github.readfall.script.Script;
import io.github.readfall.series.AsideFile;
import io.github.readfall.series.UnusablePath;
import io.github.readfall.wording.Wording;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/** Does something about findings: mends them, sets them aside, takes them up again. */
final class FindingWork {

  private static final String TOPIC = "finding";

  private final Desk<StripScene> desk;
  private final StripWork work;
  private final Executor disk;
  private final Consumer<Notice> tell;
  private final Runnable changed;

  /**
   * Does nothing yet.
   *
   * @param tell tells what could not be done; on the event thread
   * @param changed is told, on the event thread, that other findings are set aside
   */
  FindingWork(
      Desk<StripScene> desk,
      StripWork work,
      Executor disk,
      Consumer<Notice> tell,
      Runnable changed) {
    this.desk = desk;
    this.work = work;
    this.disk = disk;
    this.tell = tell;
    this.changed = changed;
  }

  /** Does what findings are offered from now on. */
  void serve(FindingBar bar) {
    bar.onMend(finding -> finding.mend().ifPresent(this::mend));
    bar.onSetAside((finding, why) -> write((file, script) -> file.add(finding, script, why)));
    bar.onTakenUp(finding -> write((file, script) -> file.takeUp(finding, script)));
  }

  private void mend(Mend mend) {
    StripEdit edit = new StripEdit.Mended(mend);
    work.edit(
        Wording.of("undo.mend", mend.sentence()),
        "",
        layout -> {
          if (edit.in(layout).equals(layout)) {
            tell.accept(Notice.of(TOPIC, Wording.of("finding.noChange")));
          }
          return edit;
        });
  }

  /** A change of what is set aside. */
  private interface Writing {
    void write(AsideFile file, Script script) throws UnusablePath;
  }

  private void write(Writing writing) {
    desk.surroundings()
        .flatMap(
            around ->
                desk.shown()
                    .map(
                        shown ->
                            job(AsideFile.of(around.files()), shown.episode().script(), writing)))
        .ifPresent(disk::execute);
  }

  private Runnable job(AsideFile file, Script script, Writing writing) {
    return () -> {
      try {
        writing.write(file, script);
        SwingUtilities.invokeLater(changed);
      } catch (UnusablePath e) {
        Notice notice = Notice.of(TOPIC, String.valueOf(e.getMessage()));
        SwingUtilities.invokeLater(() -> tell.accept(notice));
      }
    };
  }
}
