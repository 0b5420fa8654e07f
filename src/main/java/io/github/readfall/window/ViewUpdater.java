package io.github.readfall.window;

import io.github.readfall.art.ArtStore;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.job.polyglot.FittedEdition;
import io.github.readfall.script.read.ReadScript;
import io.github.readfall.window.canvas.StripScene;
import io.github.readfall.window.languages.ShownLanguages;
import io.github.readfall.window.model.CaretCounts;
import io.github.readfall.window.model.EditionSnapshot;
import io.github.readfall.window.model.EpisodeModel;
import io.github.readfall.window.model.EpisodeSnapshot;
import io.github.readfall.window.model.ReadingPace;
import io.github.readfall.window.parts.LanguageName;
import io.github.readfall.window.script.Completions;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import javax.swing.Timer;

/** Shows in every view what the desk has worked out. */
final class ViewUpdater {

  /** Work that takes longer than this, and less than twice as long, is spoken of. */
  private static final int WORK_MS = 300; // house default, no source

  private final EpisodeModel desk;
  private final WorkView work;
  private final ViewLinking linking;
  private Optional<ArtStore> art = Optional.empty();
  private Optional<StripScene> scene = Optional.empty();
  private final Map<String, Other> others = new HashMap<>();
  private ShownLanguages lookedAt = ShownLanguages.NOTHING;
  private boolean wasUnsettled;

  /** The strip in another language. */
  private record Other(FittedEdition fitted, StripScene scene) {}

  ViewUpdater(EpisodeModel desk, WorkView work, ViewLinking linking) {
    this.desk = desk;
    this.work = work;
    this.linking = linking;
    desk.onSnapshot(this::show);
    new Timer(WORK_MS, event -> work.stripColumn().showWorking(isSlow())).start();
    work.editor().onCaretLine(this::count);
  }

  private void show(EpisodeSnapshot shown, StripScene picture) {
    scene = Optional.of(picture);
    paint();
    work.editor()
        .show(
            new ReadScript(shown.episode().script(), List.of()),
            shown.findings(),
            Completions.of(shown.episode().script(), shown.episode().style()));
    if (shown.isSettled()) {
      showFindings(shown);
      work.figures().show(shown);
      work.below().readers().show(shown.galley().set());
      work.phoneColumn().pace(new ReadingPace(shown.plan().screens()));
      work.scriptColumn().title(title(shown));
    }
    count(work.editor().caret().line());
    linking.refresh();
  }

  /** What was found in the language that is looked at. */
  private void showFindings(EpisodeSnapshot shown) {
    work.findings()
        .show(
            Optional.ofNullable(others.get(lookedAt.main()))
                .filter(other -> !lookedAt.isOwn(lookedAt.main()))
                .map(other -> other.fitted().findings())
                .orElse(shown.findings()));
  }

  /** Shows the strip in these languages. */
  void look(ShownLanguages next) {
    lookedAt = next;
    caption();
    paint();
    desk.shown().filter(EpisodeSnapshot::isSettled).ifPresent(this::showFindings);
  }

  private void caption() {
    work.stripColumn().showBeside(lookedAt.beside().isPresent());
    lookedAt
        .beside()
        .ifPresentOrElse(
            other ->
                work.phoneColumn().twice(LanguageName.of(lookedAt.main()), LanguageName.of(other)),
            work.phoneColumn()::alone);
  }

  /** Shows the strip in another language wherever it is looked at. */
  void show(EditionSnapshot edition, StripScene picture) {
    others.put(edition.language(), new Other(edition.fitted(), picture));
    paint();
    if (edition.language().equals(lookedAt.main())) {
      desk.shown().filter(EpisodeSnapshot::isSettled).ifPresent(this::showFindings);
    }
  }

  private Optional<StripScene> scene(String language) {
    return lookedAt.isOwn(language)
        ? scene
        : Optional.ofNullable(others.get(language)).map(Other::scene);
  }

  /** Whether the strip was on its way the last time, too. */
  private boolean isSlow() {
    boolean before = wasUnsettled;
    wasUnsettled = !desk.isSettled();
    return before && wasUnsettled;
  }

  private static String title(EpisodeSnapshot shown) {
    String title = shown.episode().script().title();
    String number = shown.episode().script().episode();
    return title.isBlank() || number.isBlank()
        ? title
        : Wording.of("script.heading", title, number);
  }

  private void paint() {
    scene(lookedAt.main())
        .map(picture -> picture.with(art))
        .ifPresent(
            whole -> {
              work.strip().show(whole);
              work.phone().show(whole);
            });
    lookedAt
        .beside()
        .flatMap(this::scene)
        .map(picture -> picture.with(art))
        .ifPresent(
            whole -> {
              work.stripColumn().beside().show(whole);
              work.phoneColumn().beside().show(whole);
            });
  }

  /** Shows other art, or more of the same. */
  void art(Optional<ArtStore> store) {
    boolean same = store.equals(art);
    art = store;
    if (same) {
      work.strip().refresh();
      work.phone().refresh();
      work.phoneColumn().beside().refresh();
    } else {
      paint();
    }
  }

  /** Shows nothing, until the next episode is worked out. */
  void clear() {
    scene = Optional.empty();
    others.clear();
    StripScene empty = StripScene.empty(1);
    work.strip().show(empty);
    work.phone().show(empty);
    work.stripColumn().beside().show(empty);
    work.phoneColumn().beside().show(empty);
  }

  private void count(int line) {
    desk.shown()
        .map(shown -> CaretCounts.of(shown.episode().script(), line))
        .ifPresent(counts -> work.figures().atCaret(words(counts)));
  }

  private static String words(CaretCounts counts) {
    StringJoiner words = new StringJoiner("  ·  ");
    counts.cue().ifPresent(cue -> words.add(Wording.of("figures.cue", cue.speaker(), cue.words())));
    counts
        .panel()
        .ifPresent(
            panel ->
                words.add(
                    Wording.of("figures.panel", panel.name(), panel.words(), panel.balloons())));
    return words.toString();
  }
}
