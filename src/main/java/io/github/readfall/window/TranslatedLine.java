package io.github.readfall.window;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.script.Cue;
import io.github.readfall.script.Script;
import io.github.readfall.window.languages.LanguageModels;
import io.github.readfall.window.languages.TranslationPanel;
import io.github.readfall.window.model.EpisodeModel;
import io.github.readfall.window.model.EpisodeSnapshot;
import io.github.readfall.window.model.LanguageMatrix;
import io.github.readfall.window.model.Translations;
import io.github.readfall.window.parts.Notice;
import io.github.readfall.window.parts.NoticeBar;
import java.util.List;
import java.util.Optional;

/** Shows, edits and saves the translation of the cue at the caret. */
final class TranslatedLine {

  private static final String TOPIC = "translation";

  private final EpisodeModel model;
  private final LanguageModels languageModels;
  private final Translations translations;
  private final WorkView work;
  private final ViewLinking linking;
  private final NoticeBar notices;
  private final TranslationPanel panel;
  private Optional<String> language = Optional.empty();
  private Optional<String> cueId = Optional.empty();

  TranslatedLine(
      EpisodeModel model,
      LanguageModels languageModels,
      WorkView work,
      ViewLinking linking,
      NoticeBar notices) {
    this.model = model;
    this.languageModels = languageModels;
    this.translations = languageModels.translations();
    this.work = work;
    this.linking = linking;
    this.notices = notices;
    this.panel = work.scriptColumn().translation();
    listen();
  }

  private void listen() {
    work.editor().onCaretLine(line -> followCaret());
    languageModels.budgets().onMeasured(this::show);
    panel.onTyped(words -> edit((tag, id) -> translations.typed(tag, id, words)));
    panel.onState(
        state -> {
          edit((tag, id) -> translations.mark(tag, id, state));
          save();
        });
    panel.onLeft(this::save);
    panel.onStep(this::step);
  }

  /** Shows no cue until another episode is open. */
  void clear() {
    cueId = Optional.empty();
  }

  /** Sets the language to translate into; empty for none. */
  void setLanguage(Optional<String> other) {
    language = other;
    languageModels.budgets().setLanguage(other);
    refresh();
  }

  /** Saves the previous cue and shows the one at the caret. */
  private void followCaret() {
    Optional<String> now = cueAtCaret().map(Cue::id);
    if (now.isPresent() && !now.equals(cueId)) {
      save();
      cueId = now;
      now.ifPresent(work.lowerPane().matrix()::point);
    }
    show();
  }

  private Optional<Cue> cueAtCaret() {
    int line = work.editor().caret().line();
    return model.shown().map(EpisodeSnapshot::links).flatMap(links -> links.cueAt(line));
  }

  private void step(int by) {
    List<Cue> cues = cues();
    List<String> ids = cues.stream().map(Cue::id).toList();
    int next = cueId.map(ids::indexOf).orElse(-1) + by;
    if (next >= 0 && next < cues.size()) {
      linking.show(cues.get(next).line());
    }
  }

  private List<Cue> cues() {
    return model.shown().map(shown -> shown.episode().script()).map(Script::cues).orElse(List.of());
  }

  /** A change of a cue in a language. */
  private interface Edit {
    void on(String language, String cueId);
  }

  private void edit(Edit edit) {
    language.ifPresent(tag -> cueId.ifPresent(id -> edit.on(tag, id)));
  }

  /**
   * Shows the cue at the caret as it is now, or the previous one if there is no cue at the caret.
   */
  void refresh() {
    cueId =
        cueAtCaret()
            .map(Cue::id)
            .or(() -> cueId)
            .or(() -> cues().stream().findFirst().map(Cue::id));
    show();
  }

  private void show() {
    panel.show(language.flatMap(tag -> cueId.flatMap(id -> shown(tag, id))));
  }

  private Optional<TranslationPanel.Shown> shown(String tag, String id) {
    return translations
        .in(tag)
        .flatMap(translation -> translation.cue(id))
        .map(cue -> LanguageMatrix.Cell.of(cue, languageModels.fitting().fitted(tag)))
        .map(
            cell ->
                new TranslationPanel.Shown(tag, cell, languageModels.budgets().budget(tag, id)));
  }

  /** Saves all translations. */
  void save() {
    if (translations.hasUnsaved()) {
      translations.save(this::saved);
    }
  }

  private void saved() {
    if (!translations.hasUnsaved()) {
      notices.close(TOPIC);
    }
  }

  /**
   * Runs an action that leaves the episode, after unsaved translations have been saved or
   * discarded.
   */
  void leave(Runnable then) {
    if (translations.hasUnsaved()) {
      translations.save(() -> afterSaving(then));
    } else {
      then.run();
    }
  }

  private void afterSaving(Runnable then) {
    if (translations.hasUnsaved()) {
      Notice.Action discard = new Notice.Action(Wording.of("leaving.discard"), then);
      notices.show(new Notice("leaving", Wording.of("leaving.translation"), List.of(discard)));
    } else {
      then.run();
    }
  }

  /** A notice about something that could not be read or saved. */
  static Notice problem(String sentence) {
    return Notice.of(TOPIC, sentence);
  }
}
