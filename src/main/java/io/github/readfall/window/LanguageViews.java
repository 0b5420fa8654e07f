package io.github.readfall.window;

import io.github.readfall.job.StripProof;
import io.github.readfall.languages.translate.Translation;
import io.github.readfall.window.languages.LanguageModels;
import io.github.readfall.window.languages.ShownLanguages;
import io.github.readfall.window.model.EpisodeModel;
import io.github.readfall.window.model.LanguageMatrix;
import io.github.readfall.window.model.TranslationFiles;
import io.github.readfall.window.model.Translations;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Controls the languages in which the episode is shown, and the table of all of them. */
final class LanguageViews {

  private final EpisodeModel model;
  private final LanguageModels languageModels;
  private final Translations translations;
  private final WorkView work;
  private final ViewUpdater updater;
  private final TranslatedLine line;
  private List<String> offered = List.of();
  private ShownLanguages shown = ShownLanguages.NOTHING;

  LanguageViews(
      EpisodeModel model,
      LanguageModels languageModels,
      WorkView work,
      ViewUpdater updater,
      TranslatedLine line) {
    this.model = model;
    this.languageModels = languageModels;
    this.translations = languageModels.translations();
    this.work = work;
    this.updater = updater;
    this.line = line;
    listen();
    offer(List.of());
  }

  private void listen() {
    model.onSettled(this::settled);
    translations.onChange(this::changed);
    languageModels.fitting().onFitted(edition -> refresh());
    languageModels.fitting().onScene(updater::show);
    work.stripColumn().languages().onChosen(tag -> showSelected());
    work.stripColumn().otherLanguages().onChosen(tag -> showSelected());
  }

  /** Reads the translations of another episode. */
  void open(TranslationFiles files) {
    shown = ShownLanguages.NOTHING;
    line.clear();
    translations.open(files);
    updater.setLanguages(shown);
  }

  /** Closes the translations. */
  void close() {
    shown = ShownLanguages.NOTHING;
    translations.clear();
  }

  /** Reads translations that other programs have changed. */
  void readChanges() {
    languageModels.fitting().readAgain();
  }

  private void settled(StripProof proof) {
    String own = proof.episode().script().language();
    boolean wasOwn = shown.isOwn(shown.main());
    shown = new ShownLanguages(own, wasOwn ? own : shown.main(), shown.beside());
    updater.setLanguages(shown);
    languageModels.fitting().settled(proof);
    languageModels.budgets().settled(proof);
  }

  private void changed() {
    List<String> tags = new ArrayList<>();
    translations.all().forEach(translation -> tags.add(translation.language()));
    tags.remove(shown.own());
    if (!tags.isEmpty()) {
      tags.add(0, shown.own());
    }
    if (!tags.equals(offered)) {
      offer(tags);
    }
    refresh();
  }

  /**
   * Offers languages, the script's own first; the selected ones stay selected if they are still
   * offered.
   */
  private void offer(List<String> tags) {
    offered = List.copyOf(tags);
    String main = tags.contains(shown.main()) ? shown.main() : shown.own();
    Optional<String> beside = shown.beside().filter(tags::contains);
    work.stripColumn().languages().offer(tags, Optional.of(main));
    work.stripColumn().otherLanguages().offer(tags, beside);
    work.stripColumn().offerLanguages(!tags.isEmpty());
    work.lowerPane().offer(!tags.isEmpty());
    showSelected();
  }

  /** Shows the selected languages. */
  private void showSelected() {
    line.save();
    String main = work.stripColumn().languages().chosen().orElse(shown.own());
    Optional<String> beside =
        work.stripColumn().otherLanguages().chosen().filter(tag -> !tag.equals(main));
    shown = new ShownLanguages(shown.own(), main, beside);
    updater.setLanguages(shown);
    languageModels.fitting().setShownLanguages(shown.translated());
    line.setLanguage(shown.worked());
    refresh();
  }

  /** Whether every result belongs to the current strip and the current text. */
  boolean isSettled() {
    return languageModels.isSettled();
  }

  /** The languages shown. */
  ShownLanguages shown() {
    return shown;
  }

  /** Shows a language if it is not shown yet. */
  void show(String language) {
    if (!shown.shows(language)) {
      work.stripColumn().languages().choose(Optional.of(language));
    }
  }

  /** Shows the next language. */
  void showNext() {
    if (!offered.isEmpty()) {
      int next = (offered.indexOf(shown.main()) + 1) % offered.size();
      work.stripColumn().languages().choose(Optional.of(offered.get(next)));
    }
  }

  /** Shows the table of all languages, if there are translations. */
  void showMatrix() {
    if (!offered.isEmpty()) {
      work.lowerPane().showMatrix();
    }
  }

  private void refresh() {
    List<Translation> all = translations.all();
    LanguageMatrix matrix =
        model
            .shown()
            .filter(snapshot -> !all.isEmpty())
            .map(snapshot -> snapshot.episode().script())
            .map(script -> LanguageMatrix.of(script, all, languageModels.fitting()::fitted))
            .orElse(LanguageMatrix.EMPTY);
    work.lowerPane().matrix().show(matrix);
    line.refresh();
  }
}
