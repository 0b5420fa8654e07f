package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Path;

/**
 * An outline as drawn, and the inner area that it is drawn round, whose middle is the origin.
 *
 * @param halfWidthPx of the inner area; positive
 * @param halfHeightPx of the inner area; positive
 * @param outline no steps for {@link ShapeKind#NONE}
 */
public record DrawnOutline(double halfWidthPx, double halfHeightPx, Path outline) {

  private static final int MAX_ROUNDS = 8;
  private static final double EXACT_PX = 0.001;

  /** No inner area is smaller than this, however small the outline. */
  private static final double LEAST_PX = 0.5;

  /** The outline round an inner area. */
  public static DrawnOutline round(ShapeKind shape, Enclosed inner, OutlineStyle style) {
    return new DrawnOutline(inner.halfWidthPx(), inner.halfHeightPx(), shape.outline(inner, style));
  }

  /**
   * The outline that fills a width and a height to a hair. The reach of bumps and spikes depends on
   * their number, so the inner area is found by drawing and measuring, and the rest by stretching.
   */
  public static DrawnOutline filling(
      ShapeKind shape, double widthPx, double heightPx, OutlineStyle style) {
    double a = Math.max(LEAST_PX, widthPx / 2 - shape.reachPx(style.capitalPx()));
    double b = Math.max(LEAST_PX, heightPx / 2 - shape.reachPx(style.capitalPx()));
    DrawnOutline best = around(shape, a, b, style);
    DrawnOutline last = best;
    for (int i = 0; i < MAX_ROUNDS && best.error(widthPx, heightPx) > EXACT_PX; i++) {
      Box bounds = last.bounds();
      a = Math.max(LEAST_PX, a + (widthPx - bounds.width()) / 2);
      b = Math.max(LEAST_PX, b + (heightPx - bounds.height()) / 2);
      last = around(shape, a, b, style);
      best = last.error(widthPx, heightPx) < best.error(widthPx, heightPx) ? last : best;
    }
    return best.stretchedTo(widthPx, heightPx);
  }

  private static DrawnOutline around(ShapeKind shape, double a, double b, OutlineStyle style) {
    return round(shape, new Enclosed(a, b, 0, 0), style);
  }

  /** The difference of the drawn outline from a size. */
  private double error(double widthPx, double heightPx) {
    Box bounds = bounds();
    return Math.max(Math.abs(bounds.width() - widthPx), Math.abs(bounds.height() - heightPx));
  }

  /** The same outline drawn out to a width and a height. */
  public DrawnOutline stretchedTo(double widthPx, double heightPx) {
    Box bounds = bounds();
    double across = widthPx / bounds.width();
    double along = heightPx / bounds.height();
    return new DrawnOutline(
        halfWidthPx * across, halfHeightPx * along, outline.scaledBy(across, along));
  }

  /** Bounds of the drawing; of the inner area if nothing is drawn. */
  public Box bounds() {
    return outline.steps().isEmpty() ? inner() : outline.bounds();
  }

  /** Bounds of the inner area. */
  public Box inner() {
    return new Box(-halfWidthPx, -halfHeightPx, 2 * halfWidthPx, 2 * halfHeightPx);
  }
}
