package io.github.readfall.app;

import io.github.readfall.desk.FindingFilter;
import io.github.readfall.finding.Severity;
import io.github.readfall.keeping.Remembered;
import io.github.readfall.keeping.ScriptView;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Leaves an episode so that it comes back as it was looked at. */
final class Returning {

  private final Memory memory;
  private final WorkView work;
  private final Workplace workplace;

  private Optional<ScriptView> awaiting = Optional.empty();

  Returning(Memory memory, WorkView work, Workplace workplace) {
    this.memory = memory;
    this.work = work;
    this.workplace = workplace;
  }

  /** Looks at an episode as it was left. */
  void restore(Opened opened) {
    ScriptView view = memory.now().view(opened.files().script());
    work.phoneColumn().offer(opened.surroundings(), view.phone());
    work.stripColumn().setLayers(view.layers());
    work.stripColumn().setZoom(view.zoom());
    work.findings().setFilter(filter(view));
    work.editor().goTo(view.caretLine(), view.caretColumn());
    awaiting = Optional.of(view);
  }

  /** Scrolls to where the strip was left, when it is there for the first time. */
  void stripIsThere() {
    awaiting.ifPresent(view -> work.strip().showFrom(view.stripTopPx()));
    awaiting = Optional.empty();
  }

  private static FindingFilter filter(ScriptView view) {
    Set<Severity> severities =
        Arrays.stream(Severity.values())
            .filter(severity -> view.severities().contains(severity.word()))
            .collect(Collectors.toSet());
    return new FindingFilter(severities, view.findingsFilter());
  }

  /** Remembers how the episode that is open is looked at, and how the window is divided. */
  void remember() {
    workplace
        .opened()
        .ifPresent(
            opened ->
                memory.change(remembered -> remembered.viewed(opened.files().script(), now())));
    memory.change(this::divided);
  }

  private Remembered divided(Remembered before) {
    Remembered after = before;
    for (var share : work.shares().entrySet()) {
      after = after.split(share.getKey(), share.getValue());
    }
    return after;
  }

  private ScriptView now() {
    FindingFilter filter = work.findings().filter();
    return new ScriptView(
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
