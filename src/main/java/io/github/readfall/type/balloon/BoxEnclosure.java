package io.github.readfall.type.balloon;

/**
 * An upright box with round corners.
 *
 * @param radiusMargins radius of the corners over the margin; up to 1 the corners take no room from
 *     the text
 */
public record BoxEnclosure(double radiusMargins) implements Enclosure {

  private static final int STEPS = 48;

  @Override
  public Enclosed smallest(Stack stack, FitRules rules, double atMostPx2) {
    Enclosed best = Enclosed.NONE;
    double extraMost = Math.max(0, radiusMargins - 1) * rules.marginPx();
    int steps = extraMost == 0 ? 0 : STEPS;
    for (int i = 0; i <= steps; i++) {
      double share = steps == 0 ? 0 : (double) i / steps;
      Enclosed box = box(stack, rules, extraMost * share);
      best = box.areaPx2() < best.areaPx2() ? box : best;
    }
    return best.areaPx2() < atMostPx2 ? best : Enclosed.NONE;
  }

  /** The lowest box that is the widest line, its margins, and something more wide. */
  private Enclosed box(Stack stack, FitRules rules, double extraPx) {
    double halfWidth = stack.halfWidthPx() + rules.marginPx() + extraPx;
    double most = rules.maxWidthPx() / 2;
    if (halfWidth > most) {
      return Enclosed.NONE;
    }
    double halfHeight = 0;
    for (int line = 0; line < stack.lines(); line++) {
      double far = Math.max(-stack.topPx(line), stack.bottomPx(line));
      double beside = halfWidth - stack.halfWidthPx(line);
      halfHeight = Math.max(halfHeight, far + cornerDepth(beside, rules.marginPx()));
    }
    halfHeight = Math.max(halfHeight, halfWidth / rules.maxAspect());
    halfWidth = Math.min(most, Math.max(halfWidth, halfHeight * rules.minAspect()));
    return new Enclosed(halfWidth, halfHeight, 0, 4 * halfWidth * halfHeight);
  }

  /**
   * The distance below the top edge that the corner of a line at this distance from the side has to
   * keep.
   */
  private double cornerDepth(double besidePx, double marginPx) {
    double radius = radiusMargins * marginPx;
    double inner = radius - marginPx;
    double across = radius - besidePx;
    if (inner <= 0 || across <= 0) {
      return marginPx;
    }
    return Math.max(marginPx, radius - Math.sqrt(Math.max(0, inner * inner - across * across)));
  }

  @Override
  public double areaPx2(double halfWidthPx, double halfHeightPx) {
    return 4 * halfWidthPx * halfHeightPx;
  }

  @Override
  public double widestHalfPx(
      FitRules rules, double areaPx2, double distancePx, double stackHeightPx) {
    double m = rules.marginPx();
    double byHeight = areaPx2 / (2 * (stackHeightPx + 2 * m));
    double byAspect = Math.sqrt(areaPx2 * rules.maxAspect()) / 2;
    return Math.min(Math.min(byHeight, byAspect), rules.maxWidthPx() / 2) - m;
  }

  @Override
  public void openRange(FitRules rules, double areaPx2, double[] range) {
    range[0] = 0;
    range[1] = rules.maxAspect();
  }

  /** {@inheritDoc} A box's lines do not depend on each other, so no aspect is ruled out. */
  @Override
  public boolean narrow(
      FitRules rules, double areaPx2, double halfPx, double distancePx, double[] range, int at) {
    return true;
  }

  @Override
  public double depthPx(double halfWidthPx, double halfHeightPx, double acrossPx) {
    return Math.abs(acrossPx) >= halfWidthPx ? 0 : halfHeightPx;
  }

  @Override
  public double insidePx(
      double halfWidthPx, double halfHeightPx, double marginPx, double acrossPx, double alongPx) {
    double radius = Math.min(radiusMargins * marginPx, Math.min(halfWidthPx, halfHeightPx));
    double x = Math.abs(acrossPx) - (halfWidthPx - radius);
    double y = Math.abs(alongPx) - (halfHeightPx - radius);
    double beyondX = Math.max(x, 0);
    double beyondY = Math.max(y, 0);
    return radius - Math.sqrt(beyondX * beyondX + beyondY * beyondY) - Math.min(Math.max(x, y), 0);
  }
}
