package io.github.readfall.type.balloon;

import io.github.readfall.base.OneCall;
import java.util.Arrays;

/**
 * The smallest upright superellipse that keeps a margin from a stack of centred lines.
 *
 * <p>The margin is a disc round each corner of each line, so the outline has to hold discs. Each
 * disc touches it in one point at most; were those points known, the task would be to hold points.
 * So: guess them, hold the points, find where each disc would stick out furthest, hold those too,
 * and repeat. The outline round the points is never larger than the one sought, which makes it a
 * bound as well.
 *
 * <p>For points, with the middle at c and {@code s = (a/b)^n}: {@code a^n} is the greatest of
 * {@code |x|^n + |y - c|^n s}, a line in s for each point, and {@code (ab)^(n/2)} that over {@code
 * √s}, which has one valley: found by walking from line to line. The set of outlines that hold the
 * points is convex in 1/a, 1/b and c/b, so there is one valley in c too.
 *
 * <p>Worked example: one box of width w and height h without margin has the half sides {@code w/2 ·
 * 2^(1/n)} and {@code h/2 · 2^(1/n)}.
 */
@OneCall
final class SmallestSuperellipse {

  private static final double ROUGH_TOLERANCE = 1e-3;
  private static final double TOLERANCE = 1e-9;
  private static final double OUT_TOLERANCE = 1e-9;
  private static final int MAX_ROUNDS = 16;
  private static final int MAX_WALK = 64;
  private static final int MAX_SHIFTS = 40;
  private static final int TOUCH_STEPS = 3;

  private final FitRules rules;
  private final Powers powers;
  private final double leastShape;
  private final double mostShape;
  private final double widest;
  private final int corners;
  private final double[] cornerX;
  private final double[] cornerY;
  private final double[] touchX;
  private final double[] touchY;
  private final double[] x;
  private final double[] y;
  private final double[] across;
  private final double[] along;
  private int count;
  private Valley valley = Valley.NONE;

  /**
   * The best outline with its middle at one height.
   *
   * @param shape {@code (a/b)^n}
   * @param raised {@code a^n}
   * @param value {@code (ab)^(n/2)}
   * @param slope of the value by the middle
   */
  private record Valley(double middle, double shape, double raised, double value, double slope) {
    static final Valley NONE = new Valley(0, 0, 0, Double.POSITIVE_INFINITY, 0);
  }

  SmallestSuperellipse(Stack stack, FitRules rules, Powers powers) {
    this.rules = rules;
    this.powers = powers;
    this.leastShape = powers.of(rules.minAspect());
    this.mostShape = powers.of(rules.maxAspect());
    this.widest = powers.of(rules.maxWidthPx() / 2);
    int n = 2 * stack.lines();
    this.cornerX = new double[n];
    this.cornerY = new double[n];
    this.corners = hull(stack);
    this.touchX = Arrays.copyOf(cornerX, corners);
    this.touchY = Arrays.copyOf(cornerY, corners);
    int most = corners * (MAX_ROUNDS + 1);
    this.x = new double[most];
    this.y = new double[most];
    this.across = new double[most];
    this.along = new double[most];
    double aa = 1 / powers.of(Math.max(1, stack.halfWidthPx()));
    double bb = 1 / powers.of(Math.max(1, stack.halfHeightPx()));
    for (int i = 0; i < corners; i++) {
      touch(i, aa, bb, 0);
      add(touchX[i], touchY[i]);
    }
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
    for (int round = 0; round < MAX_ROUNDS; round++) {
      double tolerance = round == 0 ? ROUGH_TOLERANCE : TOLERANCE;
      Enclosed found = roundPoints(tolerance);
      if (!(found.areaPx2() * (1 - tolerance) < atMostPx2)) {
        return Enclosed.NONE;
      }
      double out = hold(found);
      if ((out <= OUT_TOLERANCE && round > 0) || round == MAX_ROUNDS - 1) {
        Enclosed exact = enclosed(valley.middle(), valley.shape());
        return exact.areaPx2() < atMostPx2 ? exact : Enclosed.NONE;
      }
    }
    return Enclosed.NONE;
  }

  private Enclosed roundPoints(double tolerance) {
    valley = deepest(tolerance);
    return valley.value() < Double.POSITIVE_INFINITY
        ? outline(valley.raised(), valley.shape(), valley.middle())
        : Enclosed.NONE;
  }

  /** The outline of one shape and middle round the points. */
  private Enclosed enclosed(double middle, double shape) {
    double raised = 0;
    for (int i = 0; i < count; i++) {
      raised = Math.max(raised, across[i] + powers.of(Math.abs(y[i] - middle)) * shape);
    }
    return outline(raised, shape, middle);
  }

  private Enclosed outline(double raised, double shape, double middle) {
    double a = powers.root(raised);
    double b = powers.root(raised / shape);
    return new Enclosed(a, b, middle, powers.unitArea() * a * b);
  }

  /**
   * The best middle: between one where the value falls and one where it rises, the next is where
   * their tangents meet, or half way if that gets on too slowly.
   */
  private Valley deepest(double tolerance) {
    double most = rules.maxShiftPx();
    Valley middle = at(0);
    if (most == 0 || middle.slope() == 0) {
      return middle;
    }
    boolean rises = middle.slope() > 0;
    Valley end = at(rises ? -most : most);
    if (rises ? end.slope() >= 0 : end.slope() <= 0) {
      return end;
    }
    return deepest(rises ? end : middle, rises ? middle : end, tolerance);
  }

  private Valley deepest(Valley fallingFrom, Valley risingTo, double tolerance) {
    Valley falls = fallingFrom;
    Valley rises = risingTo;
    Valley best = falls.value() < rises.value() ? falls : rises;
    for (int i = 0; i < MAX_SHIFTS; i++) {
      double width = rises.middle() - falls.middle();
      double meets =
          (rises.slope() * width - rises.value() + falls.value()) / (rises.slope() - falls.slope());
      double least = falls.value() + falls.slope() * meets;
      if (least >= best.value() * (1 - tolerance)) {
        break;
      }
      double step = i % 3 == 2 ? width / 2 : Math.max(width / 64, Math.min(width * 63 / 64, meets));
      Valley next = at(falls.middle() + step);
      best = next.value() < best.value() ? next : best;
      if (next.slope() == 0) {
        break;
      }
      falls = next.slope() < 0 ? next : falls;
      rises = next.slope() < 0 ? rises : next;
    }
    return best;
  }

  /** The best shape with the middle at a height. */
  private Valley at(double middle) {
    for (int i = 0; i < count; i++) {
      along[i] = powers.of(Math.abs(y[i] - middle));
    }
    int left = highest(leastShape);
    int right = highest(mostShape);
    if (along[left] * leastShape >= across[left]) {
      return narrowEnough(middle, leastShape, left, left, 1);
    }
    if (along[right] * mostShape <= across[right]) {
      return narrowEnough(middle, mostShape, right, right, 1);
    }
    return walk(middle, left, right);
  }

  /** Walks inwards from a point that decides where the value falls and one where it rises. */
  private Valley walk(double middle, int fromLeft, int fromRight) {
    int left = fromLeft;
    int right = fromRight;
    for (int step = 0; step < MAX_WALK && left != right; step++) {
      double cross = (across[left] - across[right]) / (along[right] - along[left]);
      double lowLeft = across[left] / along[left];
      double lowRight = across[right] / along[right];
      double shape = lowLeft < cross ? lowLeft : Math.max(lowRight, cross);
      int holds = lowLeft < cross ? left : right;
      int top = highest(shape);
      if (raised(top, shape) <= raised(holds, shape) * (1 + 1e-12)) {
        boolean both = shape == cross;
        double falls = across[left] - along[left] * shape;
        double rises = along[right] * shape - across[right];
        double weight = both ? rises / (rises + falls) : 1;
        return narrowEnough(middle, shape, both ? left : holds, right, weight);
      }
      boolean onRight = along[top] * shape > across[top];
      left = onRight ? left : top;
      right = onRight ? top : right;
    }
    return narrowEnough(middle, across[left] / along[left], left, left, 1);
  }

  /** The valley at a shape, or at the widest one that is narrow enough. */
  private Valley narrowEnough(double middle, double shape, int one, int other, double weight) {
    double raised = raised(one, shape);
    if (raised <= widest) {
      double root = Math.sqrt(shape);
      double pull = weight * pull(one, middle) + (1 - weight) * pull(other, middle);
      return new Valley(middle, shape, raised, raised / root, pull * root);
    }
    return asWideAsAllowed(middle);
  }

  private Valley asWideAsAllowed(double middle) {
    double shape = Double.POSITIVE_INFINITY;
    int decides = 0;
    for (int i = 0; i < count; i++) {
      double own = (widest - across[i]) / along[i];
      decides = own < shape ? i : decides;
      shape = Math.min(shape, own);
    }
    if (!(shape > 0)) {
      return Valley.NONE;
    }
    double value = widest / Math.sqrt(shape);
    double slope = value / 2 * pull(decides, middle) / along[decides];
    return new Valley(middle, shape, widest, value, slope);
  }

  /** The change of a point's height to the power as the middle moves down. */
  private double pull(int i, double middle) {
    double away = middle - y[i];
    return Math.copySign(powers.n() * powers.slope(Math.abs(away)), away);
  }

  private double raised(int i, double shape) {
    return across[i] + along[i] * shape;
  }

  private int highest(double shape) {
    int best = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      double value = across[i] + along[i] * shape;
      if (value > most) {
        most = value;
        best = i;
      }
    }
    return best;
  }

  /**
   * Holds, from now on, each disc's point that sticks out furthest of an outline too.
   *
   * @return by how much one is outside at most, as a share of 1
   */
  private double hold(Enclosed outline) {
    double aa = 1 / powers.of(outline.halfWidthPx());
    double bb = 1 / powers.of(outline.halfHeightPx());
    double most = 0;
    for (int i = 0; i < corners; i++) {
      touch(i, aa, bb, outline.shiftPx());
      double far = powers.of(touchX[i]) * aa;
      far += powers.of(Math.abs(touchY[i] - outline.shiftPx())) * bb;
      most = Math.max(most, far - 1);
      if (far - 1 > OUT_TOLERANCE / 10) {
        add(touchX[i], touchY[i]);
      }
    }
    return most;
  }

  private void add(double px, double py) {
    x[count] = px;
    y[count] = py;
    across[count] = powers.of(px);
    count++;
  }

  /** Moves a corner's point to where its disc sticks out furthest. */
  private void touch(int i, double aa, double bb, double shift) {
    double m = rules.marginPx();
    for (int step = 0; step < TOUCH_STEPS && m > 0; step++) {
      double gx = powers.slope(touchX[i]) * aa;
      double down = touchY[i] - shift;
      double gy = Math.copySign(powers.slope(Math.abs(down)) * bb, down);
      double length = Math.sqrt(gx * gx + gy * gy);
      if (length > 0) {
        touchX[i] = cornerX[i] + m * gx / length;
        touchY[i] = cornerY[i] + m * gy / length;
      }
    }
  }
}
