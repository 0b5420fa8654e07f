package io.github.readfall.type.balloon;

import io.github.readfall.base.OneCall;
import java.util.Arrays;

/**
 * The smallest upright superellipse that keeps a margin from a stack of centred lines.
 *
 * <p>The margin is a disc round each corner of each line, so the outline has to hold discs. Each
 * disc touches it in one point at most; were those points known, the task would be to hold points.
 * So: guess them, hold the points, find where each disc would stick out furthest, and repeat. The
 * outline round the points is never larger than the one sought, which makes it a bound as well.
 *
 * <p>For points and an aspect r: the outline's height follows from {@code b^n = max((x/r)^n + |y -
 * c|^n)}, least over the shift c: a convex function with corners, solved by walking from line to
 * line. The area has one valley in r (the set of outlines that hold the points is convex in 1/a,
 * 1/b and c/b), so halving by its slope finds it.
 *
 * <p>Worked example: one box of width w and height h without margin has the semi-axes {@code w/2 ·
 * 2^(1/n)} and {@code h/2 · 2^(1/n)}; for an ellipse w/√2 and h/√2.
 */
@OneCall
final class SmallestSuperellipse {

  private static final double ROUGH_TOLERANCE = 1e-3;
  private static final double ASPECT_TOLERANCE = 2e-5;
  private static final double AREA_TOLERANCE = 1e-6;
  private static final int MAX_ROUNDS = 12;
  private static final int MAX_WALK = 64;
  private static final int CROSS_STEPS = 40;
  private static final double CROSS_TOLERANCE = 1e-7;
  private static final int TOUCH_STEPS = 3;

  private final FitRules rules;
  private final Powers powers;
  private final int count;
  private final double[] cornerX;
  private final double[] cornerY;
  private final double[] x;
  private final double[] y;
  private final double[] powerX;
  private final double[] key;
  private int decidesLeft;
  private int decidesRight;
  private double weightLeft;
  private double across;
  private double along;

  SmallestSuperellipse(Stack stack, FitRules rules, Powers powers) {
    this.rules = rules;
    this.powers = powers;
    int n = 2 * stack.lines();
    this.cornerX = new double[n];
    this.cornerY = new double[n];
    this.count = hull(stack);
    this.x = Arrays.copyOf(cornerX, count);
    this.y = Arrays.copyOf(cornerY, count);
    this.powerX = new double[count];
    this.key = new double[count];
    touchBy(Math.max(1, stack.halfWidthPx()), Math.max(1, stack.halfHeightPx()), 0);
  }

  /** Keeps the right-hand corners that bulge, from top to bottom. */
  private int hull(Stack stack) {
    for (int line = 0; line < stack.lines(); line++) {
      insert(2 * line, stack.halfWidthPx(line), stack.topPx(line));
      insert(2 * line + 1, stack.halfWidthPx(line), stack.bottomPx(line));
    }
    int kept = 0;
    for (int i = 0; i < cornerX.length; i++) {
      while (kept >= 2 && isInside(kept - 2, kept - 1, i)) {
        kept--;
      }
      cornerX[kept] = cornerX[i];
      cornerY[kept] = cornerY[i];
      kept++;
    }
    return kept;
  }

  /** Corners come nearly sorted from top to bottom; ink of close lines may overlap. */
  private void insert(int at, double px, double py) {
    int i = at;
    while (i > 0 && cornerY[i - 1] > py) {
      cornerX[i] = cornerX[i - 1];
      cornerY[i] = cornerY[i - 1];
      i--;
    }
    cornerX[i] = px;
    cornerY[i] = py;
  }

  private boolean isInside(int a, int b, int c) {
    return (cornerX[b] - cornerX[a]) * (cornerY[c] - cornerY[a])
        <= (cornerX[c] - cornerX[a]) * (cornerY[b] - cornerY[a]);
  }

  Enclosed find(double atMostPx2) {
    Enclosed last = Enclosed.NONE;
    Enclosed touched = Enclosed.NONE;
    double lastMove = 0;
    for (int round = 0; round < MAX_ROUNDS; round++) {
      double tolerance = round == 0 ? ROUGH_TOLERANCE : ASPECT_TOLERANCE;
      double best = bestAspect(tolerance, atMostPx2);
      double aspect = Double.isNaN(best) ? best : narrowEnough(best);
      if (!(aspect > 0)) {
        return Enclosed.NONE;
      }
      Enclosed found = enclosed(aspect);
      if (found.areaPx2() * (1 - tolerance) >= atMostPx2) {
        return Enclosed.NONE;
      }
      double change = Math.abs(found.areaPx2() - last.areaPx2());
      if (change <= AREA_TOLERANCE * found.areaPx2() || round == MAX_ROUNDS - 1) {
        touchBy(found.halfWidthPx(), found.halfHeightPx(), found.shiftPx());
        Enclosed exact = enclosed(aspect);
        return exact.areaPx2() < atMostPx2 ? exact : Enclosed.NONE;
      }
      double move = touched.exists() ? aspect - touched.aspect() : 0;
      touched = move * lastMove < 0 ? between(touched, found) : found;
      lastMove = move;
      last = found;
      touchBy(touched.halfWidthPx(), touched.halfHeightPx(), touched.shiftPx());
    }
    return Enclosed.NONE;
  }

  /** The middle between the two, used when going all the way would overshoot and return. */
  private static Enclosed between(Enclosed one, Enclosed other) {
    return new Enclosed(
        (one.halfWidthPx() + other.halfWidthPx()) / 2,
        (one.halfHeightPx() + other.halfHeightPx()) / 2,
        (one.shiftPx() + other.shiftPx()) / 2,
        (one.areaPx2() + other.areaPx2()) / 2);
  }

  private Enclosed enclosed(double aspect) {
    double shift = bestShift(aspect);
    double b = halfHeight(shift);
    return new Enclosed(aspect * b, b, shift, powers.unitArea() * aspect * b * b);
  }

  /**
   * The aspect with the least area: halves the range by the sign of the slope.
   *
   * @return NaN once it is certain that no aspect has an area below a limit
   */
  private double bestAspect(double tolerance, double atMostPx2) {
    double low = rules.minAspect();
    double high = rules.maxAspect();
    while (high - low > tolerance * low) {
      double middle = (low + high) / 2;
      if (falls(middle)) {
        low = middle;
      } else {
        high = middle;
      }
      if (atMostPx2 < Double.POSITIVE_INFINITY && leastPx2() > atMostPx2) {
        return Double.NaN;
      }
    }
    return (low + high) / 2;
  }

  /**
   * Returns true if the area falls with a growing aspect. If points i and j decide with the weights
   * v and w, the area to the power n/2 is {@code v(X^n/R + R Y^n)} of i and {@code w} of j, with R
   * the aspect to that power, which falls while the first terms outweigh the second.
   */
  private boolean falls(double aspect) {
    double shift = bestShift(aspect);
    across = weighed(powerX[decidesLeft], powerX[decidesRight]);
    along = weighed(far(decidesLeft, shift), far(decidesRight, shift));
    double r = powers.half(aspect);
    return across > along * r * r;
  }

  private double weighed(double left, double right) {
    return weightLeft * left + (1 - weightLeft) * right;
  }

  /**
   * A bound for the area at every aspect: any weights of the points give one (a mean is never more
   * than its largest part), and those that decide at the aspect looked at last give a good one.
   */
  private double leastPx2() {
    double most = powers.half(rules.maxAspect());
    double power =
        across > along * most * most ? across / most + along * most : 2 * Math.sqrt(across * along);
    return powers.unitArea() * powers.unhalf(power);
  }

  /** Lowers the aspect until the ellipse is narrow enough; NaN if even a needle is not. */
  private double narrowEnough(double aspect) {
    double half = rules.maxWidthPx() / 2;
    if (halfWidth(aspect) <= half) {
      return aspect;
    }
    double low = 0;
    double high = aspect;
    while (high - low > ASPECT_TOLERANCE / 2 * high) {
      double middle = (low + high) / 2;
      if (halfWidth(middle) <= half) {
        low = middle;
      } else {
        high = middle;
      }
      if (high < 1e-6) {
        return Double.NaN;
      }
    }
    return low;
  }

  private double halfWidth(double aspect) {
    return aspect * halfHeight(bestShift(aspect));
  }

  /** Half the height of the outline round the points, its middle shifted. */
  private double halfHeight(double shift) {
    return powers.root(valueAt(highest(shift), shift));
  }

  /**
   * The shift with the least height: the lowest corner of {@code max(key + |y - c|^n)}. Notes the
   * points that decide it, and their weights.
   */
  private double bestShift(double aspect) {
    double most = rules.maxShiftPx();
    double squeeze = 1 / powers.of(aspect);
    for (int i = 0; i < count; i++) {
      key[i] = powerX[i] * squeeze;
    }
    int left = highest(-most);
    if (y[left] <= -most) {
      return decide(left, -most);
    }
    int right = highest(most);
    if (y[right] >= most) {
      return decide(right, most);
    }
    return between(left, right, -most, most);
  }

  private double decide(int alone, double shift) {
    decidesLeft = alone;
    decidesRight = alone;
    weightLeft = 1;
    return shift;
  }

  /**
   * Walks inwards from two shifts: at the lower one a point below its middle decides, so the height
   * falls, at the upper one a point above it, so it grows.
   */
  private double between(int fromLeft, int fromRight, double lowest, double highest) {
    int left = fromLeft;
    int right = fromRight;
    double low = lowest;
    double high = highest;
    for (int step = 0; step < MAX_WALK && left != right; step++) {
      double cross = Math.max(y[right], Math.min(y[left], cross(left, right, low, high)));
      int top = highest(cross);
      double reached = Math.max(valueAt(left, cross), valueAt(right, cross));
      if (top == left || top == right || valueAt(top, cross) <= reached * (1 + 1e-12)) {
        return decideBoth(left, right, cross);
      }
      if (y[top] > cross) {
        left = top;
        low = cross;
      } else {
        right = top;
        high = cross;
      }
    }
    return decide(left, y[left]);
  }

  private double decideBoth(int left, int right, double shift) {
    double rising = powers.slope(Math.max(0, shift - y[right]));
    double falling = powers.slope(Math.max(0, y[left] - shift));
    if (!(rising + falling > 0)) {
      return decide(left, shift);
    }
    decidesLeft = left;
    decidesRight = right;
    weightLeft = rising / (rising + falling);
    return shift;
  }

  /**
   * The shift at which two points decide alike, by false position; between a low and a high one.
   */
  private double cross(int left, int right, double lowest, double highest) {
    double low = lowest;
    double high = highest;
    double over = valueAt(left, low) - valueAt(right, low);
    double under = valueAt(left, high) - valueAt(right, high);
    double tolerance = CROSS_TOLERANCE * (highest - lowest);
    int side = 0;
    for (int i = 0; i < CROSS_STEPS && high - low > tolerance && over > 0 && under < 0; i++) {
      double at = (low * under - high * over) / (under - over);
      double value = valueAt(left, at) - valueAt(right, at);
      if (Math.abs(value) <= 1e-12 * valueAt(left, at)) {
        return at;
      }
      if (value > 0) {
        low = at;
        over = value;
        under = side > 0 ? under / 2 : under;
        side = 1;
      } else {
        high = at;
        under = value;
        over = side < 0 ? over / 2 : over;
        side = -1;
      }
    }
    return over <= 0 ? low : under >= 0 ? high : (low + high) / 2;
  }

  private double far(int i, double shift) {
    return powers.of(Math.abs(y[i] - shift));
  }

  private double valueAt(int i, double shift) {
    return key[i] + far(i, shift);
  }

  private int highest(double shift) {
    int best = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      double value = valueAt(i, shift);
      if (value > most) {
        most = value;
        best = i;
      }
    }
    return best;
  }

  /** For each disc, the point that sticks out furthest of an outline. */
  private void touchBy(double a, double b, double shift) {
    double m = rules.marginPx();
    double aa = 1 / powers.of(a);
    double bb = 1 / powers.of(b);
    for (int i = 0; i < count; i++) {
      for (int step = 0; step < TOUCH_STEPS; step++) {
        double gx = powers.slope(x[i]) * aa;
        double down = y[i] - shift;
        double gy = Math.copySign(powers.slope(Math.abs(down)), down) * bb;
        double length = Math.sqrt(gx * gx + gy * gy);
        if (length > 0) {
          x[i] = cornerX[i] + m * gx / length;
          y[i] = cornerY[i] + m * gy / length;
        }
      }
      powerX[i] = powers.of(x[i]);
    }
  }
}
