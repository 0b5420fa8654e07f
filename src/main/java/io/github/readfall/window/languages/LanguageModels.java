package io.github.readfall.window.languages;

import io.github.readfall.window.model.BudgetModel;
import io.github.readfall.window.model.LanguageModel;
import io.github.readfall.window.model.ModelThreads;
import io.github.readfall.window.model.StripScenes;
import io.github.readfall.window.model.Translations;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/**
 * All that is known of an episode in its other languages; worked out on threads of its own, so that
 * who writes the script does not wait for translations.
 *
 * @param translations what it says
 * @param fitting how that goes into the balloons
 * @param budgets how much would
 */
public record LanguageModels(
    Translations translations, LanguageModel fitting, BudgetModel budgets) {

  /**
   * Nothing known yet.
   *
   * @param disk reads and saves translations
   * @param problems hears in a sentence what could not be read or saved
   * @param fault hears of faults of our own
   */
  public static LanguageModels with(
      Executor disk, Consumer<String> problems, Consumer<Throwable> fault) {
    Executor events = SwingUtilities::invokeLater;
    Translations translations = new Translations(events, disk, problems, fault);
    return new LanguageModels(
        translations,
        new LanguageModel(ModelThreads.real(events), translations, new StripScenes()::of, fault),
        new BudgetModel(ModelThreads.real(events), fault)); // which takes seconds
  }

  /** Whether all of it is of the strip and the words as they are now. */
  public boolean isSettled() {
    return fitting.isSettled() && budgets.isSettled();
  }
}
