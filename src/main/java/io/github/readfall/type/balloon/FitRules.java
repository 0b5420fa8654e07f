package io.github.readfall.type.balloon;

/**
 * The rules of an outline, in strip pixels.
 *
 * @param marginPx least distance between a line's box and the outline; not negative
 * @param leadingPx from baseline to baseline; positive
 * @param minAspect least width over height; positive
 * @param maxAspect greatest width over height; not less than {@code minAspect}
 * @param maxWidthPx no outline is wider: then it may be narrower than {@code minAspect}
 * @param maxShiftPx distance of the outline's middle from the text's middle, above or below, that
 *     still looks centred
 * @param weighsBreaks true if ugly breaks cost (see {@link
 *     io.github.readfall.type.text.BreakCosts}); without, the smallest outline wins whatever its
 *     breaks
 * @param costsFirst true if the cheapest breaks win whatever their outline, within the area
 *     allowed: for an outline that is given
 * @param lines number of lines asked for; 0 if any may be best
 */
public record FitRules(
    double marginPx,
    double leadingPx,
    double minAspect,
    double maxAspect,
    double maxWidthPx,
    double maxShiftPx,
    boolean weighsBreaks,
    boolean costsFirst,
    int lines) {

  /** Rules of an outline that is sought: the area is weighed by the costs of breaks. */
  public FitRules(
      double marginPx,
      double leadingPx,
      double minAspect,
      double maxAspect,
      double maxWidthPx,
      double maxShiftPx,
      boolean weighsBreaks) {
    this(marginPx, leadingPx, minAspect, maxAspect, maxWidthPx, maxShiftPx, weighsBreaks, false, 0);
  }

  public FitRules {
    if (!(marginPx >= 0)
        || !(leadingPx > 0)
        || !(minAspect > 0)
        || !(maxAspect >= minAspect)
        || !(maxWidthPx > 0)
        || !(maxShiftPx >= 0)
        || lines < 0) {
      throw new IllegalArgumentException("impossible rules");
    }
  }

  /** The same rules with one aspect only. */
  public FitRules withAspect(double aspect) {
    return new FitRules(
        marginPx,
        leadingPx,
        aspect,
        aspect,
        maxWidthPx,
        maxShiftPx,
        weighsBreaks,
        costsFirst,
        lines);
  }

  /** The same rules at another leading. */
  public FitRules withLeading(double otherPx) {
    return new FitRules(
        marginPx,
        otherPx,
        minAspect,
        maxAspect,
        maxWidthPx,
        maxShiftPx,
        weighsBreaks,
        costsFirst,
        lines);
  }

  /** The same rules for a strip of any width. */
  public FitRules withoutMaxWidth() {
    return new FitRules(
        marginPx,
        leadingPx,
        minAspect,
        maxAspect,
        Double.MAX_VALUE,
        maxShiftPx,
        weighsBreaks,
        costsFirst,
        lines);
  }

  /** The same rules without costs of breaks. */
  public FitRules withoutCosts() {
    return new FitRules(
        marginPx, leadingPx, minAspect, maxAspect, maxWidthPx, maxShiftPx, false, false, lines);
  }

  /** The same rules for an outline that is given, in which area is free. */
  public FitRules withCostsFirst() {
    return new FitRules(
        marginPx,
        leadingPx,
        minAspect,
        maxAspect,
        maxWidthPx,
        maxShiftPx,
        weighsBreaks,
        true,
        lines);
  }

  /** The same rules for a number of lines; 0 if any may be best. */
  public FitRules withLines(int number) {
    return new FitRules(
        marginPx,
        leadingPx,
        minAspect,
        maxAspect,
        maxWidthPx,
        maxShiftPx,
        weighsBreaks,
        costsFirst,
        number);
  }
}
