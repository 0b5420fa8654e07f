package io.github.readfall.window.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.job.polyglot.FittedCue;
import io.github.readfall.job.polyglot.FittedEdition;
import io.github.readfall.languages.translate.State;
import io.github.readfall.languages.translate.TranslatedCue;
import io.github.readfall.window.canvas.StripScene;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class LanguageModelTest {

  private static final String SCRIPT =
      """
      Title: Ebb
      Language: en

      PANEL 1
      The mill.

      ILSE: It turns again.
      WOUTER: Leave it be.

      PANEL 2
      ILSE: Listen.
      """;

  private static final String LONG =
      "Hör doch, wie das Wasser unter den alten Brettern steigt und steigt und steigt.";

  private final TestModels.Queue disk = new TestModels.Queue();
  private final TestModels.Queue quick = new TestModels.Queue();
  private final TestModels.Queue thorough = new TestModels.Queue();
  private final List<String> troubles = new ArrayList<>();
  private final List<Throwable> faults = new ArrayList<>();
  private final List<String> scenes = new ArrayList<>();
  private final MemoryTranslations files =
      new MemoryTranslations()
          .say("de", "p1-1", "Es dreht sich wieder.")
          .say("de", "p2-1", "Horch.")
          .say("nl", "p1-1", "Het draait weer.");
  private final Translations translations =
      new Translations(Runnable::run, disk::add, troubles::add, faults::add);
  private final LanguageModel languageModel =
      new LanguageModel(
          new ModelThreads(Runnable::run, quick::add, thorough::add, Runnable::run),
          translations,
          edition -> StripScene.empty(1),
          faults::add);
  private final EpisodeModel model =
      new EpisodeModel(TestModels.proofer(), ModelThreads.none(), shown -> StripScene.empty(1));

  LanguageModelTest() {
    languageModel.onScene((edition, scene) -> scenes.add(edition.language()));
    model.onSettled(languageModel::settled);
  }

  private void open(String text) {
    translations.open(files);
    model.open(TestModels.bare(), text);
  }

  private void work() {
    while (disk.waiting() + quick.waiting() + thorough.waiting() > 0) {
      disk.run();
      quick.run();
      thorough.run();
    }
    assertEquals(List.of(), faults);
  }

  private FittedEdition fitted(String language) {
    return languageModel.fitted(language).orElseThrow();
  }

  private FittedCue fitted(String language, String cue) {
    return fitted(language).cue(cue).orElseThrow();
  }

  private TranslatedCue said(String language, String cue) {
    return translations.in(language).orElseThrow().cue(cue).orElseThrow();
  }

  @Test
  void everyTranslationIsSetIntoTheOutlinesOfTheStrip() {
    open(SCRIPT);
    work();
    assertTrue(languageModel.isSettled());
    var strip = model.shown().orElseThrow().galley();
    for (String language : List.of("de", "nl")) {
      assertEquals(
          strip.balloons().stream().map(balloon -> balloon.box()).toList(),
          fitted(language).galley().balloons().stream().map(balloon -> balloon.box()).toList());
    }
    assertEquals("Es dreht sich wieder.", words("de", "p1-1"));
    assertEquals("Leave it be.", words("de", "p1-2"));
  }

  private String words(String language, String cue) {
    return fitted(language).galley().balloons().stream()
        .map(balloon -> balloon.cue())
        .filter(said -> said.id().equals(cue))
        .findFirst()
        .orElseThrow()
        .text()
        .plain();
  }

  @Test
  void shownLanguagesAreFittedFirstAndPainted() {
    List<String> order = new ArrayList<>();
    languageModel.onFitted(edition -> order.add(edition.language()));
    open(SCRIPT);
    languageModel.setShownLanguages(Set.of("nl"));
    work();
    assertEquals(List.of("nl", "de"), order);
    assertEquals(List.of("nl"), scenes);
    languageModel.setShownLanguages(Set.of("de"));
    work();
    assertEquals(List.of("nl", "de"), scenes);
    assertEquals(List.of("nl", "de"), order);
  }

  @Test
  void afterAnEditOnlyTheCueThatWasEditedIsSetAnew() {
    open(SCRIPT);
    work();
    FittedEdition before = fitted("de");
    translations.typed("de", "p2-1", LONG);
    assertEquals(0, thorough.waiting());
    work();
    assertSame(before.cue("p1-1").orElseThrow().refit(), fitted("de", "p1-1").refit());
    assertNotSame(before.cue("p2-1").orElseThrow().refit(), fitted("de", "p2-1").refit());
    assertFalse(fitted("de", "p2-1").refit().goesIn());
    assertTrue(fitted("de", "p2-1").refit().lettersTooMany() > 0);
    translations.typed("de", "p2-1", "Horch.");
    work();
    assertEquals(verdicts(before), verdicts(fitted("de")));
  }

  @Test
  void anEditIsFittedLikeTheWholeTranslation() {
    open(SCRIPT);
    work();
    translations.typed("de", "p1-1", LONG);
    work();
    FittedEdition edited = fitted("de");
    translations.save(() -> {});
    model.setText(SCRIPT + " ");
    work();
    assertEquals(verdicts(edited), verdicts(fitted("de")));
  }

  /** The verdict on every cue, with its figure. */
  private static List<String> verdicts(FittedEdition fitted) {
    return fitted.cues().stream().map(cue -> cue.verdict() + " " + cue.inShort()).toList();
  }

  @Test
  void workThatHasBeenOvertakenIsDropped() {
    open(SCRIPT);
    work();
    translations.typed("de", "p2-1", LONG);
    translations.typed("de", "p2-1", "Horch!");
    assertEquals(1, quick.waiting());
    work();
    assertEquals("Horch!", words("de", "p2-1"));
    assertTrue(fitted("de", "p2-1").refit().goesIn());
  }

  @Test
  void aScriptThatHasChangedIsTranslatedAnewAndKeepsWhatIsNotSaved() {
    open(SCRIPT);
    work();
    translations.typed("de", "p1-2", "Lass das.");
    model.setText(SCRIPT.replace("Listen.", "Listen to it."));
    work();
    assertEquals("Lass das.", said("de", "p1-2").target());
    assertTrue(translations.hasUnsaved());
    assertEquals("Lass das.", words("de", "p1-2"));
  }

  @Test
  void whatIsTypedIsSavedAndWhatCannotBeSavedIsKept() {
    open(SCRIPT);
    work();
    translations.typed("de", "p1-2", "Lass das.");
    files.full(true);
    translations.save(() -> {});
    work();
    assertEquals(List.of("The disk is full: make room."), troubles);
    assertTrue(translations.hasUnsaved());
    files.full(false);
    translations.save(() -> {});
    work();
    assertFalse(translations.hasUnsaved());
    assertEquals(List.of("de p1-2 Lass das."), files.saved());
  }

  @Test
  void whatIsTypedWhileItIsSavedIsStillToBeSaved() {
    open(SCRIPT);
    work();
    translations.typed("de", "p1-2", "Lass");
    translations.save(() -> {});
    translations.typed("de", "p1-2", "Lass das.");
    work();
    assertTrue(translations.hasUnsaved());
  }

  @Test
  void anEditedTranslationIsOfTheScriptAsItIsNow() {
    files.stale("p1-1", "It stands still.");
    open(SCRIPT);
    work();
    assertTrue(said("de", "p1-1").isStale());
    translations.mark("de", "p1-1", State.REVIEWED);
    assertFalse(said("de", "p1-1").isStale());
    assertEquals(State.REVIEWED, said("de", "p1-1").state());
    translations.typed("de", "p1-1", "");
    assertEquals(State.INITIAL, said("de", "p1-1").state());
  }

  @Test
  void theMatrixHasARowForEveryCueAndACellForEveryLanguage() {
    open(SCRIPT);
    LanguageMatrix before = matrix();
    assertEquals(List.of(), before.languages());
    work();
    LanguageMatrix matrix = matrix();
    assertEquals(List.of("de", "nl"), matrix.languages());
    assertEquals(
        List.of("p1-1", "p1-2", "p2-1"),
        matrix.rows().stream().map(row -> row.cue().id()).toList());
    LanguageMatrix.Row second = matrix.rows().get(1);
    assertFalse(second.cells().get(0).translated().isTranslated());
    assertEquals(fitted("nl", "p1-1"), matrix.rows().get(0).cells().get(1).fitted().orElseThrow());
  }

  private LanguageMatrix matrix() {
    return LanguageMatrix.of(
        model.shown().orElseThrow().episode().script(), translations.all(), languageModel::fitted);
  }
}
