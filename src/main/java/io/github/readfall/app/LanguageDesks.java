package io.github.readfall.app;

import io.github.readfall.canvas.StripScene;
import io.github.readfall.desk.BudgetDesk;
import io.github.readfall.desk.LanguageDesk;
import io.github.readfall.desk.Threads;
import io.github.readfall.desk.Translations;
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
record LanguageDesks(
    Translations translations, LanguageDesk<StripScene> fitting, BudgetDesk budgets) {

  /**
   * Nothing known yet.
   *
   * @param disk reads and saves translations
   * @param troubled hears in a sentence what could not be read or saved
   * @param fault hears of faults of our own
   */
  static LanguageDesks with(Executor disk, Consumer<String> troubled, Consumer<Throwable> fault) {
    Executor events = SwingUtilities::invokeLater;
    Translations translations = new Translations(events, disk, troubled, fault);
    return new LanguageDesks(
        translations,
        new LanguageDesk<>(Threads.real(events), translations, new StripPictures()::of, fault),
        new BudgetDesk(Threads.real(events), fault)); // which takes seconds
  }

  /** Whether all of it is of the strip and the words as they are now. */
  boolean isSettled() {
    return fitting.isSettled() && budgets.isSettled();
  }
}
