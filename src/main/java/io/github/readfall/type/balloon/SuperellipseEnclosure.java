package io.github.readfall.type.balloon;

/**
 * An upright superellipse, {@code |x/a|^n + |y/b|^n = 1}.
 *
 * <p>With the product {@code ab} and {@code R = (a/b)^(n/2)}, a point is inside if {@code x^n <= R
 * ((ab)^(n/2) - y^n R)}: a parabola in R, from which all bounds here follow.
 *
 * @param exponent n; 2 for an ellipse
 */
public record SuperellipseEnclosure(double exponent) implements Enclosure {

  private static final double DIAGONAL = Math.sqrt(0.5);
  private static final double USUAL_ASPECT = 1.6;

  private Powers powers() {
    return Powers.by(exponent);
  }

  @Override
  public double areaPx2(double halfWidthPx, double halfHeightPx) {
    return powers().unitArea() * halfWidthPx * halfHeightPx;
  }

  @Override
  public Enclosed smallest(Stack stack, FitRules rules, double atMostPx2) {
    return new SmallestSuperellipse(stack, rules, powers()).find(atMostPx2);
  }

  /**
   * {@inheritDoc}
   *
   * <p>A disc of the margin's radius round the line's outer corner is inside the outline, so three
   * points of it are; each bounds the line by the widest chord of any outline of that area.
   */
  @Override
  public double widestHalfPx(
      FitRules rules, double areaPx2, double distancePx, double stackHeightPx) {
    double m = rules.marginPx();
    double product = powers().half(areaPx2 / powers().unitArea());
    double least = powers().half(leastAspect(rules, areaPx2));
    double most = powers().half(rules.maxAspect());
    double side = widest(product, distancePx, least, most) - m;
    double end = widest(product, distancePx + m, least, most);
    double slant = m * DIAGONAL;
    double corner = widest(product, distancePx + slant, least, most) - slant;
    return Math.min(Math.min(side, end), Math.min(corner, rules.maxWidthPx() / 2 - m));
  }

  /**
   * The least aspect; below the rules' only if an outline of this area may be too wide otherwise.
   */
  private double leastAspect(FitRules rules, double areaPx2) {
    double half = rules.maxWidthPx() / 2;
    return areaPx2 > powers().unitArea() * half * half / rules.minAspect() ? 0 : rules.minAspect();
  }

  /** The widest half chord at a distance over all outlines of a product and a range of R. */
  private double widest(double product, double y, double least, double most) {
    double far = powers().of(y);
    double best = far > 0 ? product / (2 * far) : most;
    double r = Math.max(least, Math.min(most, best));
    double power = r * (product - far * r);
    return power < 0 ? -1 : powers().root(power);
  }

  @Override
  public void openRange(FitRules rules, double areaPx2, double[] range) {
    range[0] = powers().half(leastAspect(rules, areaPx2));
    range[1] = powers().half(rules.maxAspect());
  }

  /**
   * {@inheritDoc}
   *
   * <p>One point of the margin's disc, the one that would stick out furthest of a usual outline:
   * {@code y^n R² - (ab)^(n/2) R + x^n <= 0} holds between the two roots.
   */
  @Override
  public boolean narrow(
      FitRules rules, double areaPx2, double halfPx, double distancePx, double[] range, int at) {
    Powers powers = powers();
    double product = powers.half(areaPx2 / powers.unitArea());
    double across = powers.slope(halfPx / USUAL_ASPECT) / USUAL_ASPECT;
    double along = powers.slope(distancePx);
    double reach = rules.marginPx() / Math.sqrt(across * across + along * along);
    double x = powers.of(halfPx + across * reach);
    double y = powers.of(distancePx + along * reach);
    double square = product * product - 4 * x * y;
    if (square < 0) {
      return false;
    }
    double root = product + Math.sqrt(square);
    range[at] = Math.max(range[at], 2 * x / root);
    range[at + 1] = Math.min(range[at + 1], y == 0 ? Double.MAX_VALUE : root / (2 * y));
    return range[at] <= range[at + 1];
  }

  @Override
  public double depthPx(double halfWidthPx, double halfHeightPx, double acrossPx) {
    double share = Math.abs(acrossPx) / halfWidthPx;
    return share >= 1 ? 0 : halfHeightPx * powers().root(1 - powers().of(share));
  }

  /**
   * {@inheritDoc} Found by sampling a quarter of the curve, then by the golden section about the
   * nearest.
   */
  @Override
  public double insidePx(
      double halfWidthPx, double halfHeightPx, double marginPx, double acrossPx, double alongPx) {
    Quarter quarter =
        new Quarter(powers(), halfWidthPx, halfHeightPx, Math.abs(acrossPx), Math.abs(alongPx));
    double far = quarter.distance();
    return quarter.isInside() ? far : -far;
  }

  /** The curve's quarter to the right below the middle, and a point that may be near it. */
  private record Quarter(Powers powers, double a, double b, double x, double y) {

    private static final int SAMPLES = 16;
    private static final int STEPS = 34;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    boolean isInside() {
      return powers.of(x / a) + powers.of(y / b) < 1;
    }

    double distance() {
      double nearest = 0;
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i <= SAMPLES; i++) {
        double far = squareTo((double) i / SAMPLES);
        nearest = far < least ? (double) i / SAMPLES : nearest;
        least = Math.min(far, least);
      }
      double low = Math.max(0, nearest - 1.0 / SAMPLES);
      double high = Math.min(1, nearest + 1.0 / SAMPLES);
      double left = high - GOLDEN * (high - low);
      double right = low + GOLDEN * (high - low);
      double atLeft = squareTo(left);
      double atRight = squareTo(right);
      for (int i = 0; i < STEPS; i++) {
        if (atLeft > atRight) {
          low = left;
          left = right;
          atLeft = atRight;
          right = low + GOLDEN * (high - low);
          atRight = squareTo(right);
        } else {
          high = right;
          right = left;
          atRight = atLeft;
          left = high - GOLDEN * (high - low);
          atLeft = squareTo(left);
        }
      }
      return Math.sqrt(Math.min(least, Math.min(atLeft, atRight)));
    }

    /** The square of the distance to the curve's point on the ray through (1 - share, share). */
    private double squareTo(double share) {
      double reach = 1 / powers.root(powers.of(1 - share) + powers.of(share));
      double dx = a * (1 - share) * reach - x;
      double dy = b * share * reach - y;
      return dx * dx + dy * dy;
    }
  }
}
