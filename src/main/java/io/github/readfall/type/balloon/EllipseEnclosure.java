package io.github.readfall.type.balloon;

/** An upright ellipse. */
public record EllipseEnclosure() implements Enclosure {

  private static final double DIAGONAL = Math.sqrt(0.5);
  private static final double USUAL_ASPECT_SQUARED = 1.6 * 1.6;
  private static final int HALVINGS = 60;

  @Override
  public Enclosed smallest(Stack stack, FitRules rules, double atMostPx2) {
    return new SmallestEllipse(stack, rules).find(atMostPx2);
  }

  /**
   * {@inheritDoc}
   *
   * <p>A disc of the margin's radius round the line's outer corner is inside the ellipse, so three
   * points of it are; each bounds the line by the widest chord of any ellipse of that area.
   */
  @Override
  public double widestHalfPx(
      FitRules rules, double areaPx2, double distancePx, double stackHeightPx) {
    double m = rules.marginPx();
    double product = areaPx2 / Math.PI;
    double least = leastAspect(rules, areaPx2);
    double side = widest(product, distancePx, least, rules.maxAspect()) - m;
    double end = widest(product, distancePx + m, least, rules.maxAspect());
    double slant = m * DIAGONAL;
    double corner = widest(product, distancePx + slant, least, rules.maxAspect()) - slant;
    return Math.min(Math.min(side, end), Math.min(corner, rules.maxWidthPx() / 2 - m));
  }

  /**
   * The least aspect; below the rules' only if an ellipse of this area may be too wide otherwise.
   */
  @Override
  public double leastAspect(FitRules rules, double areaPx2) {
    double half = rules.maxWidthPx() / 2;
    return areaPx2 > Math.PI * half * half / rules.minAspect() ? 0 : rules.minAspect();
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

  /**
   * {@inheritDoc}
   *
   * <p>One point of the margin's disc, the one that would stick out furthest of a usual ellipse:
   * {@code y² r² - ab r + x² <= 0} holds between the two roots.
   */
  @Override
  public boolean narrow(
      FitRules rules, double areaPx2, double halfPx, double distancePx, double[] range, int at) {
    double product = areaPx2 / Math.PI;
    double across = halfPx / USUAL_ASPECT_SQUARED;
    double reach = rules.marginPx() / Math.sqrt(across * across + distancePx * distancePx);
    double x = halfPx + across * reach;
    double y = distancePx + distancePx * reach;
    double square = product * product - 4 * x * x * y * y;
    if (square < 0) {
      return false;
    }
    double root = product + Math.sqrt(square);
    range[at] = Math.max(range[at], 2 * x * x / root);
    range[at + 1] = Math.min(range[at + 1], y == 0 ? Double.MAX_VALUE : root / (2 * y * y));
    return range[at] <= range[at + 1];
  }

  @Override
  public double depthPx(double halfWidthPx, double halfHeightPx, double acrossPx) {
    double share = acrossPx / halfWidthPx;
    return Math.abs(share) >= 1 ? 0 : halfHeightPx * Math.sqrt(1 - share * share);
  }

  /**
   * {@inheritDoc}
   *
   * <p>The nearest point of the curve is {@code (a² x / (t + a²), b² y / (t + b²))} for the one t
   * above {@code -b²}, b the lesser half, that puts it there; t is negative inside.
   */
  @Override
  public double insidePx(
      double halfWidthPx, double halfHeightPx, double marginPx, double acrossPx, double alongPx) {
    boolean wide = halfWidthPx >= halfHeightPx;
    double a = wide ? halfWidthPx : halfHeightPx;
    double b = wide ? halfHeightPx : halfWidthPx;
    double x = Math.abs(wide ? acrossPx : alongPx);
    double y = Math.abs(wide ? alongPx : acrossPx);
    double low = -b * b;
    double high = Math.max(0, Math.max(a * x, b * y) * 2 - b * b);
    for (int i = 0; i < HALVINGS; i++) {
      double t = (low + high) / 2;
      double px = a * x / (t + a * a);
      double py = b * y / (t + b * b);
      boolean beyond = px * px + py * py > 1;
      low = beyond ? t : low;
      high = beyond ? high : t;
    }
    return distance(a, b, x, y, high);
  }

  private static double distance(double a, double b, double x, double y, double t) {
    double px = Math.min(a, a * a * x / Math.max(t + a * a, Double.MIN_NORMAL));
    double py = b * Math.sqrt(Math.max(0, 1 - px * px / (a * a)));
    double far = Math.sqrt((px - x) * (px - x) + (py - y) * (py - y));
    return x * x / (a * a) + y * y / (b * b) > 1 ? -far : far;
  }
}
