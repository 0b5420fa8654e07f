package io.github.readfall.type.balloon;

import io.github.readfall.type.text.LineTable;
import java.util.Optional;

/**
 * Chooses a text's line breaks and its outline together: the breaks whose outline is smallest, with
 * a small cost on ugly ones.
 *
 * <p>The search starts from evenly balanced lines, the smallest width for each number of lines, as
 * a browser would set them. Their outline is a bound: the choice is never larger, whatever the
 * breaks cost. Then for each number of lines it goes from line to line, and drops a line as soon as
 * it is too wide for its place in any outline smaller than the best so far. Exact up to {@link
 * #EXACT_STEPS} steps, which texts of up to some thirty segments stay below; after that the best so
 * far is taken.
 */
public final class Fitter {

  /** Steps after which a search stops where it is. */
  static final int EXACT_STEPS = 200_000;

  private Fitter() {}

  /**
   * Fits a text.
   *
   * @param table every line that could be set; not empty
   * @param enclosure the kind of outline
   * @return empty if a single segment is wider than {@link FitRules#maxWidthPx} allows
   */
  public static Optional<Fit> fit(LineTable table, Enclosure enclosure, FitRules rules) {
    return fit(table, enclosure, rules, Double.POSITIVE_INFINITY);
  }

  /**
   * Fits a text into an outline of at most an area.
   *
   * @return empty if there is none as small as that
   */
  static Optional<Fit> fit(LineTable table, Enclosure enclosure, FitRules rules, double atMostPx2) {
    BreakSearch search = new BreakSearch(table, enclosure, rules, atMostPx2);
    search.startFromBalancedLines();
    search.tryEveryBreak();
    return search.best();
  }

  /** Returns true if a text has an outline of at most an area, whatever its breaks. */
  static boolean hasFit(LineTable table, Enclosure enclosure, FitRules rules, double atMostPx2) {
    BreakSearch search = new BreakSearch(table, enclosure, rules.withoutCosts(), atMostPx2);
    search.startFromBalancedLines();
    if (search.best().isEmpty()) {
      search.tryEveryBreak();
    }
    return search.best().isPresent();
  }
}
