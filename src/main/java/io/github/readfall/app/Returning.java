package io.github.readfall.app;

import io.github.readfall.desk.FindingFilter;
import io.github.readfall.keeping.Remembered;
import io.github.readfall.keeping.ScriptView;

/** Leaves an episode so that it comes back as it was looked at. */
final class Returning {

  private final Memory memory;
  private final WorkView work;
  private final Workplace workplace;

  Returning(Memory memory, WorkView work, Workplace workplace) {
    this.memory = memory;
    this.work = work;
    this.workplace = workplace;
  }

  /** Looks at an episode as it was left. */
  void restore(Opened opened) {
    ScriptView view = memory.now().view(opened.files().script());
    work.phoneColumn().offer(opened.surroundings().style().style().phones(), view.phone());
    work.stripColumn().restore(view);
    work.findings().setFilter(new FindingFilter(view.severities(), view.findingsFilter()));
    work.editor().goTo(view.caretLine(), view.caretColumn());
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
        filter.severities(),
        filter.words());
  }
}
