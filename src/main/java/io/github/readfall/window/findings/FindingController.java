package io.github.readfall.window.findings;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.finding.Fix;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.script.Script;
import io.github.readfall.series.IgnoredFile;
import io.github.readfall.strip.edits.StripEdit;
import io.github.readfall.window.model.EpisodeModel;
import io.github.readfall.window.model.EpisodeSnapshot;
import io.github.readfall.window.model.LayoutModel;
import io.github.readfall.window.parts.Notice;
import io.github.readfall.window.parts.SeenBalloons;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/** Fixes findings, ignores them, and stops ignoring them. */
public final class FindingController {

  private static final String TOPIC = "finding";

  private final EpisodeModel model;
  private final LayoutModel layoutModel;
  private final Executor disk;
  private final Consumer<Notice> notices;
  private final Runnable ignoredChanged;

  /**
   * A controller that is not connected yet.
   *
   * @param notices shows problems; called on the event thread
   * @param ignoredChanged called on the event thread after other findings are ignored
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

  /** Listens to the buttons of a bar. */
  public void connect(FindingBar bar) {
    bar.onFix(finding -> finding.fix().ifPresent(this::fix));
    bar.onIgnore((finding, why) -> write((file, script) -> file.add(finding, script, why)));
    bar.onStopIgnoring(finding -> write((file, script) -> file.remove(finding, script)));
  }

  private void fix(Fix fix) {
    model.shown().ifPresent(shown -> fix(fix, shown));
  }

  private void fix(Fix fix, EpisodeSnapshot shown) {
    StripEdit edit = new StripEdit.Fixed(fix);
    SeenBalloons balloons = new SeenBalloons(shown.episode().script(), shown.galley());
    layoutModel.edit(
        Wording.of("undo.fix", fix.sentence().inWindow(balloons)),
        "",
        layout -> {
          if (edit.in(layout).equals(layout)) {
            notices.accept(Notice.of(TOPIC, Wording.of("finding.noChange")));
          }
          return edit;
        });
  }

  /** A change of the ignored findings. */
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
