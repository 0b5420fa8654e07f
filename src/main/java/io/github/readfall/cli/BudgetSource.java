package io.github.readfall.cli;

import io.github.readfall.languages.reference.Budgets;
import io.github.readfall.languages.reference.NoReferenceText;
import io.github.readfall.languages.translate.Budget;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.series.Episode;
import io.github.readfall.type.text.Languages;
import java.util.Map;

/** Computes how many characters of a language fit the balloons of an episode. */
interface BudgetSource {

  /** Measures them; in a language without a reference text it knows none. */
  BudgetSource MEASURED = BudgetSource::measured;

  /**
   * The budgets that are known, by the id of the cue.
   *
   * @param set the episode as it is set
   * @param language a BCP 47 tag
   */
  Map<String, Budget> of(Episode episode, SetEpisode set, String language);

  private static Map<String, Budget> measured(Episode episode, SetEpisode set, String language) {
    try {
      Typesetter typesetter = new Typesetter(episode.shelf(), episode.styleIn(language));
      return Budgets.of(set, Languages.of(language), typesetter);
    } catch (NoReferenceText e) {
      return Map.of();
    }
  }
}
