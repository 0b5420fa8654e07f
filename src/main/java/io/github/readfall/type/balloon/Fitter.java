package io.github.readfall.type.balloon;

import io.github.readfall.type.text.LineTable;
import java.util.Optional;

/**
 * Chooses a text's line breaks and its outline together: the breaks whose outline has the least
 * area x (1 + costs).
 *
 * <p>The search starts from evenly balanced lines, the smallest width for each number of lines, as
 * a browser would set them, and from lines that fill trial outlines with breaks of least cost. Then
 * for each number of lines it goes from line to line, and drops a line as soon as it is too wide
 * for its place in any outline that could still be better, its costs and all rewards to come
 * counted. Exact for texts of up to fourteen segments; after {@link #FEW_STEPS} steps the best so
 * far is taken.
 */
public final class Fitter {

  /** Steps after which a search stops where it is: short texts need fewer. */
  static final int EXACT_STEPS = 200_000;

  /** The same for texts that are too long to try every breaking of. */
  static final int FEW_STEPS = 5_000;

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
    search.startFromChords();
    search.tryEveryBreak();
    return search.best();
  }

  /**
   * Fits a text into a given outline, where area is free: with the breaks of least cost and, among
   * those, the most air.
   *
   * @param areaPx2 of the outline; its aspect is the rules' only one
   * @return empty if the text does not fit it
   */
  public static Optional<Fit> fitInto(
      LineTable table, Enclosure enclosure, FitRules rules, double areaPx2) {
    return fit(table, enclosure, rules.withCostsFirst(), areaPx2);
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
