package io.github.readfall.cli;

import io.github.readfall.translate.Budget;
import io.github.readfall.typeset.SetEpisode;
import java.util.Map;

/** Says how many characters of a language go into the balloons of an episode. */
interface BudgetSource {

  /** Knows nothing. */
  BudgetSource NONE = (episode, language) -> Map.of();

  /**
   * The budgets that are known, by the id of the cue.
   *
   * @param language a BCP 47 tag
   */
  Map<String, Budget> of(SetEpisode episode, String language);
}
