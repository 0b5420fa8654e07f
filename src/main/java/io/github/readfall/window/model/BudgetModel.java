package io.github.readfall.window.model;

import io.github.readfall.job.StripProof;
import io.github.readfall.languages.reference.Budgets;
import io.github.readfall.languages.reference.NoReferenceText;
import io.github.readfall.languages.translate.Budget;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.type.text.Languages;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Computes how many characters of a language fit into the balloons of the strip. All methods are
 * called on the event thread, and so is the listener.
 */
public final class BudgetModel {

  private final ModelThreads threads;
  private final LatestJob thorough;
  private final BackgroundFailures failures;
  private final Map<String, Map<String, Budget>> budgets = new HashMap<>();
  private Optional<StripProof> strip = Optional.empty();
  private Optional<String> shownLanguage = Optional.empty();
  private Runnable listener = () -> {};
  private long version;

  /**
   * A model without a strip.
   *
   * @param fault is given internal errors
   */
  public BudgetModel(ModelThreads threads, Consumer<Throwable> fault) {
    this.threads = threads;
    this.thorough = new LatestJob(threads.thorough());
    this.failures = new BackgroundFailures(threads.events(), fault);
  }

  /** Takes another strip. */
  public void settled(StripProof proof) {
    version++;
    strip = Optional.of(proof);
    budgets.clear();
    measure();
  }

  /**
   * Sets the language to compute budgets for, now and for every strip that follows; empty for none.
   */
  public void setLanguage(Optional<String> language) {
    if (!language.equals(shownLanguage)) {
      shownLanguage = language;
      measure();
    }
  }

  private void measure() {
    long now = version;
    strip.ifPresent(
        proof ->
            shownLanguage
                .filter(language -> !budgets.containsKey(language))
                .ifPresent(
                    language ->
                        thorough.offer(failures.guarded(() -> measure(proof, language, now)))));
  }

  private void measure(StripProof proof, String language, long of) {
    Map<String, Budget> measured = measured(proof, language);
    threads
        .events()
        .execute(
            () -> {
              if (of == version) {
                budgets.put(language, measured);
                listener.run();
              }
            });
  }

  /** Computes budgets; none if there is no reference text of the language. */
  private static Map<String, Budget> measured(StripProof proof, String language) {
    Typesetter typesetter = new Typesetter(proof.episode().shelf(), proof.episode().style());
    try {
      return Budgets.of(proof.galley().set(), Languages.of(language), typesetter);
    } catch (NoReferenceText e) {
      return Map.of();
    }
  }

  /** Whether no budgets are left to be computed. */
  public boolean isSettled() {
    return strip.isEmpty()
        || shownLanguage.filter(language -> !budgets.containsKey(language)).isEmpty();
  }

  /** The number of characters that fit into the balloon of a cue; empty until it is known. */
  public Optional<Budget> budget(String language, String cueId) {
    return Optional.ofNullable(budgets.getOrDefault(language, Map.of()).get(cueId));
  }

  /** Sets the listener that is called when more budgets are known. */
  public void onMeasured(Runnable other) {
    listener = other;
  }
}
