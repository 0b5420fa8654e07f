package io.github.readfall.window;

import io.github.readfall.base.finding.Severity;
import io.github.readfall.series.autosave.ScriptViewState;
import io.github.readfall.series.autosave.WindowState;
import io.github.readfall.window.model.FindingFilter;
import io.github.readfall.window.workplace.OpenEpisode;
import io.github.readfall.window.workplace.SavedWindowState;
import io.github.readfall.window.workplace.Workplace;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Remembers how an episode is viewed, and restores it when it is opened again. */
final class ViewRestoring {

  private final SavedWindowState state;
  private final WorkView work;
  private final Workplace workplace;

  private Optional<ScriptViewState> pending = Optional.empty();

  ViewRestoring(SavedWindowState state, WorkView work, Workplace workplace) {
    this.state = state;
    this.work = work;
    this.workplace = workplace;
  }

  /** Restores the view of an episode. */
  void restore(OpenEpisode opened) {
    ScriptViewState view = state.now().view(opened.files().script());
    work.phoneColumn().offer(opened.surroundings(), view.phone());
    work.stripColumn().setLayers(view.layers());
    work.stripColumn().setZoom(view.zoom());
    work.findings().setFilter(filter(view));
    work.editor().goTo(view.caretLine(), view.caretColumn());
    pending = Optional.of(view);
  }

  /** Scrolls to the remembered position when the strip is shown for the first time. */
  void stripShown() {
    pending.ifPresent(view -> work.strip().showFrom(view.stripTopPx()));
    pending = Optional.empty();
  }

  private static FindingFilter filter(ScriptViewState view) {
    Set<Severity> severities =
        Arrays.stream(Severity.values())
            .filter(severity -> view.severities().contains(severity.word()))
            .collect(Collectors.toSet());
    return new FindingFilter(severities, view.findingsFilter());
  }

  /** Remembers how the open episode is viewed and how the window is divided. */
  void remember() {
    workplace
        .opened()
        .ifPresent(
            opened ->
                state.change(remembered -> remembered.viewed(opened.files().script(), now())));
    state.change(this::withShares);
  }

  private WindowState withShares(WindowState before) {
    WindowState after = before;
    for (var share : work.shares().entrySet()) {
      after = after.split(share.getKey(), share.getValue());
    }
    return after;
  }

  private ScriptViewState now() {
    FindingFilter filter = work.findings().filter();
    return new ScriptViewState(
        work.editor().caret().line(),
        work.editor().caret().column(),
        work.strip().visible().topPx(),
        work.stripColumn().zoomWord(),
        work.phoneColumn().phone(),
        work.stripColumn().layersOn(),
        filter.severities().stream().map(Severity::word).collect(Collectors.toSet()),
        filter.words());
  }
}
