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

/** Chooses the languages in which the episode is seen, and shows how it goes in in all of them. */
final class LanguageViews {

  private final EpisodeModel desk;
  private final LanguageModels desks;
  private final Translations translations;
  private final WorkView work;
  private final ViewUpdater showing;
  private final TranslatedLine line;
  private List<String> offered = List.of();
  private ShownLanguages lookedAt = ShownLanguages.NOTHING;

  LanguageViews(
      EpisodeModel desk,
      LanguageModels desks,
      WorkView work,
      ViewUpdater showing,
      TranslatedLine line) {
    this.desk = desk;
    this.desks = desks;
    this.translations = desks.translations();
    this.work = work;
    this.showing = showing;
    this.line = line;
    listen();
    offer(List.of());
  }

  private void listen() {
    desk.onSettled(this::settled);
    translations.onChange(this::changed);
    desks.fitting().onFitted(edition -> refresh());
    desks.fitting().onScene(showing::show);
    work.stripColumn().languages().onChosen(tag -> look());
    work.stripColumn().otherLanguages().onChosen(tag -> look());
  }

  /** Takes up the translations of another episode. */
  void open(TranslationFiles files) {
    lookedAt = ShownLanguages.NOTHING;
    line.clear();
    translations.open(files);
    showing.look(lookedAt);
  }

  /** Puts the translations away. */
  void close() {
    lookedAt = ShownLanguages.NOTHING;
    translations.clear();
  }

  /** Reads what others have written of the translations since. */
  void lookAgain() {
    desks.fitting().readAgain();
  }

  private void settled(StripProof proof) {
    String own = proof.episode().script().language();
    boolean wasOwn = lookedAt.isOwn(lookedAt.main());
    lookedAt = new ShownLanguages(own, wasOwn ? own : lookedAt.main(), lookedAt.beside());
    showing.look(lookedAt);
    desks.fitting().settled(proof);
    desks.budgets().settled(proof);
  }

  private void changed() {
    List<String> tags = new ArrayList<>();
    translations.all().forEach(translation -> tags.add(translation.language()));
    tags.remove(lookedAt.own());
    if (!tags.isEmpty()) {
      tags.add(0, lookedAt.own());
    }
    if (!tags.equals(offered)) {
      offer(tags);
    }
    refresh();
  }

  /** Offers these languages, the script's own first; what is looked at stays so where it can. */
  private void offer(List<String> tags) {
    offered = List.copyOf(tags);
    String main = tags.contains(lookedAt.main()) ? lookedAt.main() : lookedAt.own();
    Optional<String> beside = lookedAt.beside().filter(tags::contains);
    work.stripColumn().languages().offer(tags, Optional.of(main));
    work.stripColumn().otherLanguages().offer(tags, beside);
    work.stripColumn().offerLanguages(!tags.isEmpty());
    work.below().offer(!tags.isEmpty());
    look();
  }

  /** Looks at what is chosen. */
  private void look() {
    line.save();
    String main = work.stripColumn().languages().chosen().orElse(lookedAt.own());
    Optional<String> beside =
        work.stripColumn().otherLanguages().chosen().filter(tag -> !tag.equals(main));
    lookedAt = new ShownLanguages(lookedAt.own(), main, beside);
    showing.look(lookedAt);
    desks.fitting().setShownLanguages(lookedAt.translated());
    line.workAt(lookedAt.worked());
    refresh();
  }

  /** Whether all that is known of them is of the strip and the words as they are now. */
  boolean isSettled() {
    return desks.isSettled();
  }

  /** What is looked at. */
  ShownLanguages lookedAt() {
    return lookedAt;
  }

  /** Shows a language where it is not shown already. */
  void show(String language) {
    if (!lookedAt.shows(language)) {
      work.stripColumn().languages().choose(Optional.of(language));
    }
  }

  /** Shows the next language. */
  void showNext() {
    if (!offered.isEmpty()) {
      int next = (offered.indexOf(lookedAt.main()) + 1) % offered.size();
      work.stripColumn().languages().choose(Optional.of(offered.get(next)));
    }
  }

  /** Shows how every cue goes in in every language, where there are translations. */
  void showMatrix() {
    if (!offered.isEmpty()) {
      work.below().showMatrix();
    }
  }

  private void refresh() {
    List<Translation> all = translations.all();
    LanguageMatrix matrix =
        desk.shown()
            .filter(shown -> !all.isEmpty())
            .map(shown -> shown.episode().script())
            .map(script -> LanguageMatrix.of(script, all, desks.fitting()::fitted))
            .orElse(LanguageMatrix.EMPTY);
    work.below().matrix().show(matrix);
    line.refresh();
  }
}
