package io.github.readfall.window.findings;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.finding.Fix;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.script.Script;
import io.github.readfall.series.IgnoredFile;
import io.github.readfall.strip.edits.StripEdit;
import io.github.readfall.window.model.EpisodeModel;
import io.github.readfall.window.model.LayoutModel;
import io.github.readfall.window.parts.Notice;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/** Does something about findings: mends them, sets them aside, takes them up again. */
public final class FindingController {

  private static final String TOPIC = "finding";

  private final EpisodeModel desk;
  private final LayoutModel work;
  private final Executor disk;
  private final Consumer<Notice> tell;
  private final Runnable changed;

  /**
   * Does nothing yet.
   *
   * @param tell tells what could not be done; on the event thread
   * @param changed is told, on the event thread, that other findings are set aside
   */
  public FindingController(
      EpisodeModel desk, LayoutModel work, Executor disk, Consumer<Notice> tell, Runnable changed) {
    this.desk = desk;
    this.work = work;
    this.disk = disk;
    this.tell = tell;
    this.changed = changed;
  }

  /** Does what findings are offered from now on. */
  public void serve(FindingBar bar) {
    bar.onMend(finding -> finding.mend().ifPresent(this::mend));
    bar.onSetAside((finding, why) -> write((file, script) -> file.add(finding, script, why)));
    bar.onTakenUp(finding -> write((file, script) -> file.takeUp(finding, script)));
  }

  private void mend(Fix mend) {
    StripEdit edit = new StripEdit.Mended(mend);
    work.edit(
        Wording.of("undo.fix", mend.sentence()),
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
    void write(IgnoredFile file, Script script) throws UnusablePath;
  }

  private void write(Writing writing) {
    desk.surroundings()
        .flatMap(
            around ->
                desk.shown()
                    .map(
                        shown ->
                            job(IgnoredFile.of(around.files()), shown.episode().script(), writing)))
        .ifPresent(disk::execute);
  }

  private Runnable job(IgnoredFile file, Script script, Writing writing) {
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
