package io.github.readfall.type.balloon;

import java.util.Arrays;

/**
 * The smallest upright ellipse that keeps a margin from a stack of centred lines.
 *
 * <p>The margin is a disc round each corner of each line, so the ellipse has to hold discs. Each
 * disc touches it in one point at most; were those points known, the task would be to hold points.
 * So: guess them, hold the points, find where each disc would stick out furthest, and repeat. The
 * ellipse round the points is never larger than the one sought, which makes it a bound as well.
 *
 * <p>For points: shrink sideways by the aspect r, and the ellipse becomes a circle whose middle
 * lies on the axis. Its squared radius is the least over c of {@code c² + max(x²/r² + y² - 2yc)}, a
 * convex function with corners, solved by walking from line to line. The area {@code π r b²} has
 * one valley in r (the set of ellipses that hold the points is convex in 1/a, 1/b and c/b), so
 * halving by its slope finds it.
 *
 * <p>Worked example: one box of width w and height h without margin has the semi-axes w/√2 and
 * h/√2.
 */
final class SmallestEllipse {

  private static final double ROUGH_TOLERANCE = 1e-3;
  private static final double ASPECT_TOLERANCE = 2e-5;
  private static final double AREA_TOLERANCE = 1e-6;
  private static final int MAX_ROUNDS = 12;
  private static final int MAX_WALK = 64;
  private static final int TOUCH_STEPS = 3;

  private final FitRules rules;
  private final int count;
  private final double[] cornerX;
  private final double[] cornerY;
  private final double[] x;
  private final double[] y;
  private final double[] key;
  private int decidesLeft;
  private int decidesRight;
  private double weightLeft;
  private double across;
  private double along;

  SmallestEllipse(Stack stack, FitRules rules) {
    this.rules = rules;
    int n = 2 * stack.lines();
    this.cornerX = new double[n];
    this.cornerY = new double[n];
    this.count = hull(stack);
    this.x = Arrays.copyOf(cornerX, count);
    this.y = Arrays.copyOf(cornerY, count);
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
    double b = radius(aspect, shift);
    return new Enclosed(aspect * b, b, shift, Math.PI * aspect * b * b);
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
   * v and w, the area is {@code v(X²/r + rY²)} of i and {@code w} of j, which falls while the first
   * terms outweigh the second.
   */
  private boolean falls(double aspect) {
    double shift = bestShift(aspect);
    double left = y[decidesLeft] - shift;
    double right = y[decidesRight] - shift;
    across = weighed(x[decidesLeft] * x[decidesLeft], x[decidesRight] * x[decidesRight]);
    along = weighed(left * left, right * right);
    return across > along * aspect * aspect;
  }

  private double weighed(double left, double right) {
    return weightLeft * left + (1 - weightLeft) * right;
  }

  /**
   * A bound for the area at every aspect: any weights of the points give one (a mean is never more
   * than its largest part), and those that decide at the aspect looked at last give a good one.
   */
  private double leastPx2() {
    if (across > along * rules.maxAspect() * rules.maxAspect()) {
      return Math.PI * (across / rules.maxAspect() + along * rules.maxAspect());
    }
    return 2 * Math.PI * Math.sqrt(across * along);
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
    return aspect * radius(aspect, bestShift(aspect));
  }

  /** Radius of the circle round the shrunk points, its middle shifted. */
  private double radius(double aspect, double shift) {
    double most = 0;
    for (int i = 0; i < count; i++) {
      double dx = x[i] / aspect;
      double dy = y[i] - shift;
      most = Math.max(most, dx * dx + dy * dy);
    }
    return Math.sqrt(most);
  }

  /**
   * The shift with the least radius: the lowest corner of {@code c² + max(key - 2yc)}. Notes the
   * points that decide it, and their weights.
   */
  private double bestShift(double aspect) {
    double most = rules.maxShiftPx();
    double squeeze = 1 / (aspect * aspect);
    for (int i = 0; i < count; i++) {
      key[i] = x[i] * x[i] * squeeze + y[i] * y[i];
    }
    int left = highest(-most);
    if (y[left] <= -most) {
      return decide(left, -most);
    }
    int right = highest(most);
    if (y[right] >= most) {
      return decide(right, most);
    }
    return between(left, right);
  }

  private double decide(int alone, double shift) {
    decidesLeft = alone;
    decidesRight = alone;
    weightLeft = 1;
    return shift;
  }

  /** Walks inwards from a point that decides on the left and one that decides on the right. */
  private double between(int fromLeft, int fromRight) {
    int left = fromLeft;
    int right = fromRight;
    for (int step = 0; step < MAX_WALK && left != right; step++) {
      double cross = (key[left] - key[right]) / (2 * (y[left] - y[right]));
      if (y[left] < cross) {
        right = highest(y[left]);
        if (right == left) {
          break;
        }
      } else if (y[right] > cross) {
        int top = highest(y[right]);
        if (top == right) {
          return decide(right, y[right]);
        }
        left = top;
      } else {
        int top = highest(cross);
        if (valueAt(top, cross) <= valueAt(left, cross) * (1 + 1e-12)) {
          decidesLeft = left;
          decidesRight = right;
          weightLeft = (cross - y[right]) / (y[left] - y[right]);
          return cross;
        }
        if (y[top] > cross) {
          left = top;
        } else {
          right = top;
        }
      }
    }
    return decide(left, y[left]);
  }

  private double valueAt(int i, double shift) {
    return key[i] - 2 * y[i] * shift;
  }

  private int highest(double shift) {
    int best = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      double value = key[i] - 2 * y[i] * shift;
      if (value > most) {
        most = value;
        best = i;
      }
    }
    return best;
  }

  /** For each disc, the point that sticks out furthest of an ellipse. */
  private void touchBy(double a, double b, double shift) {
    double m = rules.marginPx();
    double aa = 1 / (a * a);
    double bb = 1 / (b * b);
    for (int i = 0; i < count; i++) {
      for (int step = 0; step < TOUCH_STEPS; step++) {
        double gx = x[i] * aa;
        double gy = (y[i] - shift) * bb;
        double length = Math.sqrt(gx * gx + gy * gy);
        if (length > 0) {
          x[i] = cornerX[i] + m * gx / length;
          y[i] = cornerY[i] + m * gy / length;
        }
      }
    }
  }
}
