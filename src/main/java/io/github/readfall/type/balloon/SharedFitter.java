package io.github.readfall.type.balloon;

import java.util.List;
import java.util.Optional;

/**
 * Finds the smallest outline that several texts fit, each with its own breaks: for a balloon whose
 * words are to be replaced by those of other languages.
 *
 * <p>The smallest outlines of two texts at one aspect are nested: the larger holds both. So all
 * that is searched is the aspect at which the larger of them is smallest. Mostly one text is so
 * much the longest that its own outline holds the others; then nothing is searched. Otherwise those
 * that stick out join those that decide, one by one, until none does: what is smallest for some of
 * the texts and holds the others too is smallest for all.
 *
 * <p>Areas are within {@link SharedSearch#ASPECT_STEP} of the least there is, as the tests check by
 * exhaustive search.
 */
public final class SharedFitter {

  private SharedFitter() {}

  /**
   * The smallest outline that every text fits.
   *
   * @param texts in any order; not empty, with some aspects in common
   * @return empty if one of them alone has an outline wider than its rules allow
   */
  public static Optional<SharedFit> fit(List<FitText> texts, Enclosure enclosure) {
    return SharedSearch.of(texts, enclosure).map(SharedSearch::find);
  }
}
