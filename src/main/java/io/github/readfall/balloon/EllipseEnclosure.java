package io.github.readfall.balloon;

/** An upright ellipse. */
public record EllipseEnclosure() implements Enclosure {

  private static final double DIAGONAL = Math.sqrt(0.5);

  @Override
  public Enclosed smallest(Stack stack, FitRules rules, double atMostPx2) {
    return new SmallestEllipse(stack, rules).find(atMostPx2);
  }

  /**
   * {@inheritDoc}
   *
   * <p>A disc of the margin's radius round the line's outer corner lies inside the ellipse, so
   * three points of it do; each bounds the line by the widest chord of any ellipse of that area.
   */
  @Override
  public double widestHalfPx(
      FitRules rules, double areaPx2, double distancePx, double stackHeightPx) {
    double m = rules.marginPx();
    double product = areaPx2 / Math.PI;
    double least = mayBeNarrow(rules, areaPx2) ? 0 : rules.minAspect();
    double side = widest(product, distancePx, least, rules.maxAspect()) - m;
    double end = widest(product, distancePx + m, least, rules.maxAspect());
    double slant = m * DIAGONAL;
    double corner = widest(product, distancePx + slant, least, rules.maxAspect()) - slant;
    return Math.min(Math.min(side, end), Math.min(corner, rules.maxWidthPx() / 2 - m));
  }

  /** Whether an ellipse of this area may have to be narrower than the least aspect. */
  private static boolean mayBeNarrow(FitRules rules, double areaPx2) {
    double half = rules.maxWidthPx() / 2;
    return areaPx2 > Math.PI * half * half / rules.minAspect();
  }

  /**
   * The widest half chord at a distance over all ellipses with {@code a b} given and {@code a/b} in
   * a range: {@code x² = ab r - y² r²}, a parabola in r.
   */
  private static double widest(double product, double y, double minAspect, double maxAspect) {
    double best = y > 0 ? product / (2 * y * y) : maxAspect;
    double r = Math.max(minAspect, Math.min(maxAspect, best));
    double square = r * (product - y * y * r);
    return square < 0 ? -1 : Math.sqrt(square);
  }

  @Override
  public double chordPx(double halfWidthPx, double halfHeightPx, double distancePx) {
    double share = distancePx / halfHeightPx;
    return share >= 1 ? 0 : 2 * halfWidthPx * Math.sqrt(1 - share * share);
  }
}
