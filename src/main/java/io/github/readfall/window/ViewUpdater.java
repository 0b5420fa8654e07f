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
import io.github.readfall.window.parts.SeenBalloons;
import io.github.readfall.window.script.Completions;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import javax.swing.Timer;

/** Shows the results of the model in every view. */
final class ViewUpdater {

  /**
   * Milliseconds after which the heading says that the strip is being placed; at most twice as
   * many.
   */
  private static final int WORK_MS = 300; // house default, no source

  private final EpisodeModel model;
  private final WorkView work;
  private final ViewLinking linking;
  private Optional<ArtStore> art = Optional.empty();
  private Optional<StripScene> scene = Optional.empty();
  private final Map<String, Other> others = new HashMap<>();
  private ShownLanguages languages = ShownLanguages.NOTHING;
  private boolean wasUnsettled;

  /** The strip in another language. */
  private record Other(FittedEdition fitted, StripScene scene) {}

  ViewUpdater(EpisodeModel model, WorkView work, ViewLinking linking) {
    this.model = model;
    this.work = work;
    this.linking = linking;
    model.onSnapshot(this::show);
    new Timer(WORK_MS, event -> work.stripColumn().showWorking(isSlow())).start();
    work.editor().onCaretLine(this::count);
  }

  private void show(EpisodeSnapshot shown, StripScene picture) {
    scene = Optional.of(picture);
    paint();
    work.editor()
        .show(
            new ReadScript(shown.episode().script(), List.of()),
            balloons(shown).inWindow(shown.findings()),
            Completions.of(shown.episode().script(), shown.episode().style()));
    if (shown.isSettled()) {
      showFindings(shown);
      work.figures().show(shown);
      work.lowerPane().readers().show(shown.galley().set());
      work.phoneColumn().pace(new ReadingPace(shown.plan().screens()));
      work.scriptColumn().title(title(shown));
    }
    count(work.editor().caret().line());
    linking.refresh();
  }

  /** Shows the findings of the main language. */
  private void showFindings(EpisodeSnapshot shown) {
    work.findings()
        .show(
            Optional.ofNullable(others.get(languages.main()))
                .filter(other -> !languages.isOwn(languages.main()))
                .map(other -> other.fitted().findings())
                .orElse(shown.findings()),
            balloons(shown));
  }

  private static SeenBalloons balloons(EpisodeSnapshot shown) {
    return new SeenBalloons(shown.episode().script(), shown.galley());
  }

  /** Shows the strip in other languages. */
  void setLanguages(ShownLanguages next) {
    languages = next;
    caption();
    paint();
    model.shown().filter(EpisodeSnapshot::isSettled).ifPresent(this::showFindings);
  }

  private void caption() {
    work.stripColumn().showBeside(languages.beside().isPresent());
    languages
        .beside()
        .ifPresentOrElse(
            other ->
                work.phoneColumn().twice(LanguageName.of(languages.main()), LanguageName.of(other)),
            work.phoneColumn()::alone);
  }

  /** Shows an edition of the strip wherever its language is shown. */
  void show(EditionSnapshot edition, StripScene picture) {
    others.put(edition.language(), new Other(edition.fitted(), picture));
    paint();
    if (edition.language().equals(languages.main())) {
      model.shown().filter(EpisodeSnapshot::isSettled).ifPresent(this::showFindings);
    }
  }

  private Optional<StripScene> scene(String language) {
    return languages.isOwn(language)
        ? scene
        : Optional.ofNullable(others.get(language)).map(Other::scene);
  }

  /** Whether the strip is still being placed, now and at the last check. */
  private boolean isSlow() {
    boolean before = wasUnsettled;
    wasUnsettled = !model.isSettled();
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
    scene(languages.main())
        .map(picture -> picture.with(art))
        .ifPresent(
            whole -> {
              work.strip().show(whole);
              work.phone().show(whole);
            });
    languages
        .beside()
        .flatMap(this::scene)
        .map(picture -> picture.with(art))
        .ifPresent(
            whole -> {
              work.stripColumn().beside().show(whole);
              work.phoneColumn().beside().show(whole);
            });
  }

  /** Shows other art, or more of the same art. */
  void showArt(Optional<ArtStore> store) {
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

  private void count(int line) {
    model
        .shown()
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
