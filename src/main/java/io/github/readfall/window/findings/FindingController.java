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

  private final EpisodeModel model;
  private final LayoutModel layoutModel;
  private final Executor disk;
  private final Consumer<Notice> notices;
  private final Runnable ignoredChanged;

  /**
   * Does nothing yet.
   *
   * @param notices tells what could not be done; on the event thread
   * @param ignoredChanged is told, on the event thread, that other findings are set aside
   */
  public FindingController(
      EpisodeModel model,
      LayoutModel layoutModel,
      Executor disk,
      Consumer<Notice> notices,
      Runnable ignoredChanged) {
    this.model = model;
    this.layoutModel = layoutModel;
    this.disk = disk;
    this.notices = notices;
    this.ignoredChanged = ignoredChanged;
  }

  /** Does what findings are offered from now on. */
  public void connect(FindingBar bar) {
    bar.onFix(finding -> finding.mend().ifPresent(this::fix));
    bar.onIgnore((finding, why) -> write((file, script) -> file.add(finding, script, why)));
    bar.onStopIgnoring(finding -> write((file, script) -> file.takeUp(finding, script)));
  }

  private void fix(Fix fix) {
    StripEdit edit = new StripEdit.Mended(fix);
    layoutModel.edit(
        Wording.of("undo.fix", fix.sentence()),
        "",
        layout -> {
          if (edit.in(layout).equals(layout)) {
            notices.accept(Notice.of(TOPIC, Wording.of("finding.noChange")));
          }
          return edit;
        });
  }

  /** A change of what is set aside. */
  private interface Writing {
    void write(IgnoredFile file, Script script) throws UnusablePath;
  }

  private void write(Writing writing) {
    model
        .surroundings()
        .flatMap(
            around ->
                model
                    .shown()
                    .map(
                        shown ->
                            job(IgnoredFile.of(around.files()), shown.episode().script(), writing)))
        .ifPresent(disk::execute);
  }

  private Runnable job(IgnoredFile file, Script script, Writing writing) {
    return () -> {
      try {
        writing.write(file, script);
        SwingUtilities.invokeLater(ignoredChanged);
      } catch (UnusablePath e) {
        Notice notice = Notice.of(TOPIC, String.valueOf(e.getMessage()));
        SwingUtilities.invokeLater(() -> notices.accept(notice));
      }
    };
  }
}
