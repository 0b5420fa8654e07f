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
 * The models of an episode's other languages; they compute on threads of their own, so that typing
 * does not wait for translations.
 *
 * @param translations their text
 * @param fitting how well they fit into the balloons
 * @param budgets how much text would fit
 */
public record LanguageModels(
    Translations translations, LanguageModel fitting, BudgetModel budgets) {

  /**
   * Models without translations.
   *
   * @param disk reads and saves translations
   * @param problems called with a sentence about what could not be read or saved
   * @param fault called with errors of the program itself
   */
  public static LanguageModels with(
      Executor disk, Consumer<String> problems, Consumer<Throwable> fault) {
    Executor events = SwingUtilities::invokeLater;
    Translations translations = new Translations(events, disk, problems, fault);
    return new LanguageModels(
        translations,
        new LanguageModel(ModelThreads.real(events), translations, new StripScenes()::of, fault),
        new BudgetModel(
            ModelThreads.real(events), fault)); // a thread of its own, because budgets take seconds
  }

  /** Whether every result belongs to the current strip and the current text. */
  public boolean isSettled() {
    return fitting.isSettled() && budgets.isSettled();
  }
}
