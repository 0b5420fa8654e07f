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
 * How many characters of a language go into the balloons of the strip. All methods are called on
 * the thread of the window, and the listener is told on it.
 */
public final class BudgetModel {

  private final ModelThreads threads;
  private final LatestJob thorough;
  private final BackgroundFailures faults;
  private final Map<String, Map<String, Budget>> budgets = new HashMap<>();
  private Optional<StripProof> strip = Optional.empty();
  private Optional<String> wanted = Optional.empty();
  private Runnable listener = () -> {};
  private long version;

  /**
   * A desk with no strip on it.
   *
   * @param fault hears of faults of our own
   */
  public BudgetModel(ModelThreads threads, Consumer<Throwable> fault) {
    this.threads = threads;
    this.thorough = new LatestJob(threads.thorough());
    this.faults = new BackgroundFailures(threads.events(), fault);
  }

  /** The strip is another now. */
  public void settled(StripProof proof) {
    version++;
    strip = Optional.of(proof);
    budgets.clear();
    measure();
  }

  /** The budgets of a language are wanted, now and of every strip that follows; or of none. */
  public void setLanguage(Optional<String> language) {
    if (!language.equals(wanted)) {
      wanted = language;
      measure();
    }
  }

  private void measure() {
    long now = version;
    strip.ifPresent(
        proof ->
            wanted
                .filter(language -> !budgets.containsKey(language))
                .ifPresent(
                    language ->
                        thorough.offer(faults.guarded(() -> measure(proof, language, now)))));
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

  /** None where there is no text to measure with. */
  private static Map<String, Budget> measured(StripProof proof, String language) {
    Typesetter typesetter = new Typesetter(proof.episode().shelf(), proof.episode().style());
    try {
      return Budgets.of(proof.galley().set(), Languages.of(language), typesetter);
    } catch (NoReferenceText e) {
      return Map.of();
    }
  }

  /** Whether nothing is left to be measured. */
  public boolean isSettled() {
    return strip.isEmpty() || wanted.filter(language -> !budgets.containsKey(language)).isEmpty();
  }

  /** How many characters go into the balloon of a cue, where that is known. */
  public Optional<Budget> budget(String language, String cueId) {
    return Optional.ofNullable(budgets.getOrDefault(language, Map.of()).get(cueId));
  }

  /** Tells when more is known. */
  public void onMeasured(Runnable told) {
    listener = told;
  }
}
