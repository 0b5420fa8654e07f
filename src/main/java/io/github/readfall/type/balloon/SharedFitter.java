package io.github.readfall.type.balloon;

import java.util.List;
import java.util.Optional;

/**
 * Finds the smallest outline that several texts go into, each broken as suits it: what a balloon
 * needs whose words are to be exchanged for those of other languages.
 *
 * <p>The smallest outline of a text at one aspect goes with the smallest of another: the larger
 * holds both. So all that is sought is the aspect at which the larger of them is smallest. Mostly
 * one text is so much the longest that its own outline holds the others; then nothing is sought.
 * Otherwise those that stick out join those that decide, one by one, until none does: what is
 * smallest for some of the texts and holds the others too is smallest for all.
 *
 * <p>Areas are within {@link SharedSearch#ASPECT_STEP} of the least there is, as the tests try by
 * exhaustion.
 */
public final class SharedFitter {

  private SharedFitter() {}

  /**
   * The smallest outline that every text goes into.
   *
   * @param texts in any order; not empty, and their aspects have some in common
   * @return empty where one of them has an outline by itself that is wider than its rules allow
   */
  public static Optional<SharedFit> fit(List<FitText> texts, Enclosure enclosure) {
    return SharedSearch.of(texts, enclosure).map(SharedSearch::find);
  }
}
