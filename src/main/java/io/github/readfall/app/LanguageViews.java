package io.github.readfall.app;

import io.github.readfall.canvas.StripScene;
import io.github.readfall.desk.BudgetDesk;
import io.github.readfall.desk.Desk;
import io.github.readfall.desk.LanguageDesk;
import io.github.readfall.desk.LanguageMatrix;
import io.github.readfall.desk.Shown;
import io.github.readfall.desk.TranslationFiles;
import io.github.readfall.desk.Translations;
import io.github.readfall.proof.StripProof;
import io.github.readfall.script.Cue;
import io.github.readfall.script.Script;
import io.github.readfall.translate.Translation;
import io.github.readfall.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Shows the episode in its other languages: on strip and phone, in the matrix, and cue by cue where
 * it can be written.
 */
final class LanguageViews {

  private static final String TOPIC = "translation";

  private final Desk<StripScene> desk;
  private final Translations translations;
  private final LanguageDesk<StripScene> languageDesk;
  private final BudgetDesk budgets;
  private final WorkView work;
  private final Showing showing;
  private final Linking linking;
  private final NoticeBar notices;
  private final TranslationPanel panel;
  private List<String> offered = List.of();
  private LookedAt lookedAt = LookedAt.NOTHING;
  private Optional<String> cueId = Optional.empty();

  LanguageViews(
      Desk<StripScene> desk,
      Translations translations,
      LanguageDesk<StripScene> languageDesk,
      BudgetDesk budgets,
      WorkView work,
      Showing showing,
      Linking linking,
      NoticeBar notices) {
    this.desk = desk;
    this.translations = translations;
    this.languageDesk = languageDesk;
    this.budgets = budgets;
    this.work = work;
    this.showing = showing;
    this.linking = linking;
    this.notices = notices;
    this.panel = work.scriptColumn().translation();
    listen();
    offer(List.of());
  }

  private void listen() {
    desk.onSettled(this::settled);
    translations.onChange(this::changed);
    languageDesk.onFitted(edition -> refresh());
    languageDesk.onPicture(showing::show);
    budgets.onMeasured(this::showCue);
    work.stripColumn().languages().onChosen(tag -> look());
    work.stripColumn().otherLanguages().onChosen(tag -> look());
    work.editor().onCaret(line -> goTo());
    work.below()
        .matrix()
        .onChosen(
            (line, language) -> {
              language.ifPresent(this::show);
              linking.show(line);
            });
    panel.onTyped(words -> edit((language, id) -> translations.typed(language, id, words)));
    panel.onState(
        state -> {
          edit((language, id) -> translations.mark(language, id, state));
          save();
        });
    panel.onLeft(this::save);
    panel.onStep(this::step);
  }

  /** Takes up the translations of another episode. */
  void open(TranslationFiles files) {
    lookedAt = LookedAt.NOTHING;
    cueId = Optional.empty();
    translations.open(files);
    showing.look(lookedAt);
  }

  /** Puts the translations away. */
  void close() {
    lookedAt = LookedAt.NOTHING;
    translations.clear();
  }

  private void settled(StripProof proof) {
    String own = proof.episode().script().language();
    boolean wasOwn = lookedAt.isOwn(lookedAt.main());
    lookedAt = new LookedAt(own, wasOwn ? own : lookedAt.main(), lookedAt.beside());
    showing.look(lookedAt);
    languageDesk.settled(proof);
    budgets.settled(proof);
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
    LanguageBox languages = work.stripColumn().languages();
    LanguageBox others = work.stripColumn().otherLanguages();
    languages.offer(tags, Optional.of(main));
    others.offer(tags, beside);
    work.stripColumn().offerLanguages(!tags.isEmpty());
    work.below().offer(!tags.isEmpty());
    look();
  }

  /** Looks at what is chosen. */
  private void look() {
    save();
    String main = work.stripColumn().languages().chosen().orElse(lookedAt.own());
    Optional<String> beside =
        work.stripColumn().otherLanguages().chosen().filter(tag -> !tag.equals(main));
    lookedAt = new LookedAt(lookedAt.own(), main, beside);
    showing.look(lookedAt);
    languageDesk.see(lookedAt.translated());
    budgets.want(lookedAt.worked());
    refresh();
  }

  /** The languages there are, the script's own first; none where there are no translations. */
  List<String> languages() {
    return offered;
  }

  /** Reads what others have written of the translations since. */
  void lookAgain() {
    languageDesk.readAgain();
  }

  /** Whether all that is known of them is of the strip and the words as they are now. */
  boolean isSettled() {
    return languageDesk.isSettled() && budgets.isSettled();
  }

  /** What is looked at. */
  LookedAt lookedAt() {
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

  /** The cue at the caret is another. */
  private void goTo() {
    Optional<String> now = cueAtCaret().map(Cue::id);
    if (now.isPresent() && !now.equals(cueId)) {
      save();
      cueId = now;
      now.ifPresent(work.below().matrix()::point);
    }
    showCue();
  }

  private Optional<Cue> cueAtCaret() {
    int line = work.editor().caret().line();
    return desk.shown().map(Shown::links).flatMap(links -> links.cueAt(line));
  }

  private void step(int by) {
    List<Cue> cues = script().map(Script::cues).orElse(List.of());
    for (int i = 0; i < cues.size(); i++) {
      if (cueId.filter(cues.get(i).id()::equals).isPresent()
          && i + by >= 0
          && i + by < cues.size()) {
        linking.show(cues.get(i + by).line());
        return;
      }
    }
  }

  private Optional<Script> script() {
    return desk.shown().map(shown -> shown.episode().script());
  }

  /** Something that is done to a cue in a language. */
  private interface Edit {
    void on(String language, String cueId);
  }

  private void edit(Edit edit) {
    lookedAt.worked().ifPresent(language -> cueId.ifPresent(id -> edit.on(language, id)));
  }

  private void refresh() {
    List<Translation> all = translations.all();
    LanguageMatrix matrix =
        all.isEmpty()
            ? LanguageMatrix.EMPTY
            : script()
                .map(script -> LanguageMatrix.of(script, all, languageDesk::fitted))
                .orElse(LanguageMatrix.EMPTY);
    work.below().matrix().show(matrix);
    cueId =
        cueAtCaret()
            .map(Cue::id)
            .or(() -> cueId)
            .or(() -> script().flatMap(script -> script.cues().stream().findFirst().map(Cue::id)));
    showCue();
  }

  private void showCue() {
    panel.show(lookedAt.worked().flatMap(language -> cueId.flatMap(id -> shown(language, id))));
  }

  private Optional<TranslationPanel.Shown> shown(String language, String id) {
    return translations
        .in(language)
        .flatMap(translation -> translation.cue(id))
        .map(
            cue ->
                new TranslationPanel.Shown(
                    language,
                    LanguageMatrix.Cell.of(cue, languageDesk.fitted(language)),
                    budgets.budget(language, id)));
  }

  /** Saves what was written in other languages. */
  void save() {
    if (translations.hasUnsaved()) {
      translations.save(this::saved);
    }
  }

  private void saved() {
    if (!translations.hasUnsaved()) {
      notices.drop(TOPIC);
    }
  }

  /** Does something that leaves the episode, when what is not saved is taken care of. */
  void leave(Runnable then) {
    if (translations.hasUnsaved()) {
      translations.save(() -> afterSaving(then));
    } else {
      then.run();
    }
  }

  private void afterSaving(Runnable then) {
    if (translations.hasUnsaved()) {
      notices.tell(
          new Notice(
              "leaving",
              Wording.of("leaving.translation"),
              List.of(new Notice.Way(Wording.of("leaving.drop"), then))));
    } else {
      then.run();
    }
  }

  /** Says what could not be read or saved. */
  static Notice trouble(String sentence) {
    return Notice.of(TOPIC, sentence);
  }
}
