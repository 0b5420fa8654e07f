package io.github.readfall.type.balloon;

/**
 * An outline's size and place round a stack of lines.
 *
 * @param halfWidthPx of the outline
 * @param halfHeightPx of the outline
 * @param shiftPx distance of its middle below the stack's middle
 * @param areaPx2 of the outline
 */
public record Enclosed(double halfWidthPx, double halfHeightPx, double shiftPx, double areaPx2) {

  /** No outline. */
  public static final Enclosed NONE = new Enclosed(0, 0, 0, Double.POSITIVE_INFINITY);

  public boolean exists() {
    return areaPx2 < Double.POSITIVE_INFINITY;
  }

  /** Width over height. */
  public double aspect() {
    return halfWidthPx / halfHeightPx;
  }
}
