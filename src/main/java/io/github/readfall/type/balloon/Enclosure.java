package io.github.readfall.type.balloon;

/**
 * The kinds of inner area a balloon can have: the outline that text keeps its margin from. Bumps
 * and spikes are drawn outside it.
 */
public sealed interface Enclosure permits SuperellipseEnclosure, BoxEnclosure {

  /**
   * The smallest one round a stack of lines.
   *
   * @param atMostPx2 limit above which the search stops, once the area is certain not to be less
   * @return {@link Enclosed#NONE} if there is none as small as that, or none narrow enough
   */
  Enclosed smallest(Stack stack, FitRules rules, double atMostPx2);

  /** The area of an outline with these half sides. */
  double areaPx2(double halfWidthPx, double halfHeightPx);

  /**
   * An upper bound for half the width of one line, in any stack whose outline is not larger than an
   * area.
   *
   * @param areaPx2 of the outline
   * @param distancePx the line's far edge is at least this far above or below the outline's middle
   * @param stackHeightPx the stack is at least this high
   * @return negative if there is no room at all
   */
  double widestHalfPx(FitRules rules, double areaPx2, double distancePx, double stackHeightPx);

  /**
   * Sets the range of aspects that an outline of at most an area can have.
   *
   * @param range its first two places are set, in a measure of the enclosure's own that grows with
   *     the aspect
   */
  void openRange(FitRules rules, double areaPx2, double[] range);

  /**
   * Narrows the aspects that an outline of at most an area may have, by one line that it must hold.
   *
   * @param halfPx half the line's width
   * @param distancePx the line's far edge is at least this far above or below the outline's middle
   * @param range the least and the greatest aspect so far, at {@code at} and the place after, in
   *     the measure of {@link #openRange}; narrowed
   * @return true if any aspect is left
   */
  boolean narrow(
      FitRules rules, double areaPx2, double halfPx, double distancePx, double[] range, int at);

  /**
   * The distance of an outline's edge below its middle.
   *
   * @param halfWidthPx of the outline
   * @param halfHeightPx of the outline
   * @param acrossPx to the left or right of the middle
   */
  double depthPx(double halfWidthPx, double halfHeightPx, double acrossPx);

  /**
   * The distance of a point from the nearest edge of the outline round it; negative outside.
   *
   * @param halfWidthPx of the outline; positive
   * @param halfHeightPx of the outline; positive
   * @param marginPx the measure of corners
   * @param acrossPx to the left or right of the middle
   * @param alongPx above or below the middle
   */
  double insidePx(
      double halfWidthPx, double halfHeightPx, double marginPx, double acrossPx, double alongPx);

  /**
   * The distance of a stack of lines from the outline round it; negative if any of it is outside.
   */
  default double insidePx(Enclosed outline, double marginPx, Stack stack) {
    double least = Double.POSITIVE_INFINITY;
    for (int line = 0; line < stack.lines(); line++) {
      double across = stack.halfWidthPx(line);
      double top = stack.topPx(line) - outline.shiftPx();
      double bottom = stack.bottomPx(line) - outline.shiftPx();
      double a = outline.halfWidthPx();
      double b = outline.halfHeightPx();
      least = Math.min(least, insidePx(a, b, marginPx, across, top));
      least = Math.min(least, insidePx(a, b, marginPx, across, bottom));
    }
    return least;
  }
}
