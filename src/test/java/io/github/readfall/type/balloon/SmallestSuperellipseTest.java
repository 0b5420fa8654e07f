package io.github.readfall.type.balloon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.geom.XY;
import io.github.readfall.type.text.LineBox;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.special.Gamma;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The smallest superellipse against closed forms and against a numeric optimiser that knows nothing
 * of how it is found: Brent's method, of Apache Commons Math, started in several valleys, on points
 * densely set round each corner.
 */
class SmallestSuperellipseTest {

  private static final double ANY = 1000;
  private static final double NO_LARGER = 1.0005;
  private static final double FEASIBLE = 1 + 1e-4;
  private static final int ROUND_A_CORNER = 96;
  private static final int VALLEYS = 3;
  private static final double[] EXPONENTS = {2, 2.5, 3.2};

  private static FitRules open(double marginPx, double leadingPx, double maxShiftPx) {
    return new FitRules(marginPx, leadingPx, 1 / ANY, ANY, Double.MAX_VALUE, maxShiftPx, false);
  }

  private static Enclosed smallest(Stack stack, FitRules rules) {
    return smallest(stack, rules, 2);
  }

  private static Enclosed smallest(Stack stack, FitRules rules, double exponent) {
    return new SuperellipseEnclosure(exponent).smallest(stack, rules, Double.POSITIVE_INFINITY);
  }

  /**
   * Areas for half a width and half a height of 1 by {@code 4 Γ(1 + 1/n)² / Γ(1 + 2/n)}
   * (Encyclopedia of mathematics, CRC, "Superellipse"), with the gamma function of Apache Commons
   * Math; six digits of the usual ones were computed apart.
   */
  @ParameterizedTest
  @CsvSource({"2, 3.141593", "2.2, 3.251409", "2.5, 3.380935", "3, 3.533278", "4, 3.708149"})
  void areaIsThatOfTheFormula(double n, double area) {
    double formula = 4 * Math.pow(Gamma.gamma(1 + 1 / n), 2) / Gamma.gamma(1 + 2 / n);
    assertEquals(area, formula, 5e-7);
    assertEquals(formula, Powers.by(n).unitArea(), 1e-8);
  }

  /** Its half sides are {@code 2^(-1/n)} of the outline's: facts of the same formula. */
  @ParameterizedTest
  @CsvSource({"2, 0.707107", "2.2, 0.729740", "2.5, 0.757858", "3, 0.793701", "4, 0.840896"})
  void oneBoxFillsItsKnownShare(double n, double share) {
    Stack stack = Stack.of(List.of(new LineBox(0, 400, -100, 0)), 30);
    Enclosed found = smallest(stack, open(0, 30, 0), n);
    assertEquals(share, 200 / found.halfWidthPx(), 1e-4);
    assertEquals(share, 50 / found.halfHeightPx(), 1e-4);
  }

  @ParameterizedTest
  @ValueSource(doubles = {2, 2.5, 3.2})
  void rootsAndPowersAreThoseOfTheGeneralPower(double n) {
    Powers powers = Powers.by(n);
    for (double value : new double[] {0, 0.3, 1, 77.5, 2000}) {
      assertEquals(Math.pow(value, n), powers.of(value), 1e-12 * powers.of(value));
      assertEquals(Math.pow(value, n - 1), powers.slope(value), 1e-12 * powers.slope(value));
      assertEquals(Math.pow(value, n / 2), powers.half(value), 1e-12 * powers.half(value));
      assertEquals(value, powers.root(powers.of(value)), 1e-12 * value);
      assertEquals(value, powers.unhalf(powers.half(value)), 1e-12 * value);
    }
  }

  /** The inscribed rectangle of largest share: semi-axes w/√2 and h/√2, area π/2 of the box's. */
  @ParameterizedTest
  @CsvSource({"6, 4", "100, 24", "24, 100", "900, 59", "1.5, 1.5"})
  void oneBoxHasAnEllipseOfKnownAxes(double width, double height) {
    Stack stack = Stack.of(List.of(new LineBox(0, width, -height, 0)), 30);
    Enclosed found = smallest(stack, open(0, 30, 0));
    assertEquals(1, found.halfWidthPx() / (width / Math.sqrt(2)), 1e-4);
    assertEquals(1, found.halfHeightPx() / (height / Math.sqrt(2)), 1e-4);
    assertEquals(Math.PI / 2, found.areaPx2() / (width * height), 1e-6);
  }

  /** Lines 24 high, one below the other; expected values were computed by brute force. */
  @ParameterizedTest
  @CsvSource({
    "100 160 180 160 100, 92.702, 71.253, 20751.1, 0, 20751.1",
    "60 140 180 140 60, 91.652, 63.498, 18283.1, 0, 18283.1",
    "180 180 180 180 180, 127.279, 84.853, 33929.2, 0, 33929.2",
    "40 180 40, 95.197, 36.822, 11012.3, 0, 11012.3",
    "120 180 180 120, 97.980, 60.716, 18689.0, 0, 18689.0",
    "180 60, 127.279, 33.941, 13571.7, -7.08, 10745.7",
    "100 180 180 180, 127.279, 67.882, 27143.4, 10.75, 22629.1"
  })
  void knownStacksHaveKnownEllipses(
      String widths, double a, double b, double area, double shift, double shiftedArea) {
    List<LineBox> lines =
        Arrays.stream(widths.split(" ", -1))
            .map(width -> new LineBox(0, Double.parseDouble(width), -24, 0))
            .toList();
    Stack stack = Stack.of(lines, 24);
    Enclosed centred = smallest(stack, open(0, 24, 0));
    assertEquals(1, centred.halfWidthPx() / a, 2e-4);
    assertEquals(1, centred.halfHeightPx() / b, 2e-4);
    assertEquals(1, centred.areaPx2() / area, 1e-5);
    Enclosed shifted = smallest(stack, open(0, 24, 1000));
    assertEquals(1, shifted.areaPx2() / shiftedArea, 1e-5);
    assertEquals(shift, shifted.shiftPx(), 0.02);
  }

  static Stream<Arguments> stacksAndRules() {
    return IntStream.range(0, 200)
        .boxed()
        .flatMap(
            seed ->
                Stream.of(0.0, 24.0)
                    .map(margin -> Arguments.of(seed, margin, EXPONENTS[seed % 3])));
  }

  @ParameterizedTest
  @MethodSource("stacksAndRules")
  void noNumericSearchFindsASmallerOne(int seed, double marginPx, double n) {
    SplittableRandom random = new SplittableRandom(seed);
    double leadingPx = random.nextBoolean() ? 97 : 60; // at 60 the inks of lines overlap
    double minAspect = random.nextInt(3) == 0 ? 1.0 / 3 : 1;
    double maxAspect = random.nextInt(3) == 0 ? 6 : 2.6;
    double shift = random.nextInt(3) == 0 ? 0 : random.nextDouble(0, 60);
    FitRules rules =
        new FitRules(marginPx, leadingPx, minAspect, maxAspect, Double.MAX_VALUE, shift, false);
    Stack stack = stack(random, leadingPx);
    Enclosed found = smallest(stack, rules, n);
    List<XY> points = points(stack, marginPx);
    assertFeasible(found, points, rules, n);
    double theirs = leastArea(points, rules, n);
    assertTrue(found.areaPx2() <= theirs * NO_LARGER, () -> found.areaPx2() / theirs + " larger");
  }

  private static Stack stack(SplittableRandom random, double leadingPx) {
    List<LineBox> lines = new ArrayList<>();
    boolean capitals = random.nextBoolean();
    for (int i = random.nextInt(1, 9); i > 0; i--) {
      double ascent = capitals ? 59 : random.nextDouble(40, 78);
      double descent = capitals ? 0 : random.nextDouble(-8, 24);
      lines.add(new LineBox(0, random.nextDouble(15, 900), -ascent, descent));
    }
    return Stack.of(lines, leadingPx);
  }

  /** Points on the right-hand half of the margin's circle round each right-hand corner. */
  private static List<XY> points(Stack stack, double marginPx) {
    List<XY> points = new ArrayList<>();
    int steps = marginPx == 0 ? 0 : ROUND_A_CORNER;
    for (int line = 0; line < stack.lines(); line++) {
      for (int i = 0; i <= steps; i++) {
        double turn = Math.PI * ((double) i / ROUND_A_CORNER - 0.5);
        double x = stack.halfWidthPx(line) + marginPx * Math.cos(turn);
        points.add(new XY(x, stack.topPx(line) + marginPx * Math.sin(turn)));
        points.add(new XY(x, stack.bottomPx(line) + marginPx * Math.sin(turn)));
      }
    }
    return points;
  }

  private static void assertFeasible(Enclosed found, List<XY> points, FitRules rules, double n) {
    for (XY point : points) {
      double x = point.x() / found.halfWidthPx();
      double y = Math.abs(point.y() - found.shiftPx()) / found.halfHeightPx();
      assertTrue(
          Math.pow(x, n) + Math.pow(y, n) <= FEASIBLE, () -> point + " sticks out of " + found);
    }
    assertTrue(Math.abs(found.shiftPx()) <= rules.maxShiftPx() + 1e-9);
    assertTrue(found.aspect() <= rules.maxAspect() * 1.0001);
    assertTrue(found.halfWidthPx() <= rules.maxWidthPx() / 2 * 1.0001);
    assertEquals(
        Powers.by(n).unitArea() * found.halfWidthPx() * found.halfHeightPx(),
        found.areaPx2(),
        1e-6 * found.areaPx2());
  }

  private static double leastArea(List<XY> points, FitRules rules, double n) {
    double from = StrictMath.log(rules.minAspect());
    double way = StrictMath.log(rules.maxAspect()) - from;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < VALLEYS; i++) {
      double low = from + way * i / VALLEYS;
      least = Math.min(least, minimum(low, low + way / VALLEYS, r -> area(points, rules, n, r)));
    }
    return least;
  }

  /** The least area at one aspect, over every shift. */
  private static double area(List<XY> points, FitRules rules, double n, double logAspect) {
    double aspect = StrictMath.exp(logAspect);
    double far = rules.maxShiftPx();
    DoubleUnaryOperator powerB =
        c -> {
          double most = 0;
          for (XY point : points) {
            double y = Math.abs(point.y() - c);
            most = Math.max(most, Math.pow(point.x() / aspect, n) + Math.pow(y, n));
          }
          return most;
        };
    double power = far == 0 ? powerB.applyAsDouble(0) : minimum(-far, far, powerB);
    return Powers.by(n).unitArea() * aspect * Math.pow(power, 2 / n);
  }

  private static double minimum(double low, double high, DoubleUnaryOperator of) {
    double inside =
        new BrentOptimizer(1e-6, 1e-9)
            .optimize(
                new MaxEval(500),
                GoalType.MINIMIZE,
                new UnivariateObjectiveFunction(of::applyAsDouble),
                new SearchInterval(low, high))
            .getValue();
    return Math.min(inside, Math.min(of.applyAsDouble(low), of.applyAsDouble(high)));
  }

  @Test
  void aFlatStackTakesTheLargestAspectAndATallOneTheLeast() {
    FitRules rules = new FitRules(24, 97, 1, 2.6, Double.MAX_VALUE, 20, false);
    Stack flat = Stack.of(List.of(new LineBox(0, 900, -59, 0)), 97);
    assertEquals(2.6, smallest(flat, rules).aspect(), 1e-3);
    Stack tall = Stack.of(Stream.generate(() -> new LineBox(0, 60, -59, 0)).limit(7).toList(), 97);
    assertEquals(1, smallest(tall, rules).aspect(), 1e-3);
  }

  /** With the width given, the height is the least that holds every point at its own chord. */
  @ParameterizedTest
  @CsvSource({"0", "24"})
  void whereTheStripIsNarrowItIsAsWideAsAllowedAndNoHigherThanNeeded(double marginPx) {
    int narrow = 0;
    for (int seed = 0; seed < 100; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Stack stack = stack(random, 97);
      double halfPx = stack.halfWidthPx() + marginPx + random.nextDouble(5, 60);
      FitRules rules = new FitRules(marginPx, 97, 1, 2.6, 2 * halfPx, 20, false);
      Enclosed found = smallest(stack, rules);
      List<XY> points = points(stack, marginPx);
      assertFeasible(found, points, rules, 2);
      if (smallest(stack, rules.withoutMaxWidth()).halfWidthPx() > halfPx) {
        narrow++;
        double height = minimum(-20, 20, c -> height(points, halfPx, c));
        assertEquals(1, found.halfWidthPx() / halfPx, 1e-3);
        assertTrue(found.areaPx2() <= Math.PI * halfPx * height * 1.001, "seed " + seed);
      }
    }
    assertTrue(narrow > 20, "only " + narrow);
  }

  private static double height(List<XY> points, double halfWidth, double shift) {
    return points.stream()
        .mapToDouble(
            p -> {
              double share = p.x() / halfWidth;
              return Math.abs(p.y() - shift) / Math.sqrt(1 - share * share);
            })
        .max()
        .orElseThrow();
  }

  @Test
  void noneIsNarrowerThanItsText() {
    Stack stack = Stack.of(List.of(new LineBox(0, 300, -59, 0)), 97);
    FitRules tooNarrow = new FitRules(24, 97, 1, 2.6, 340, 20, false);
    assertFalse(smallest(stack, tooNarrow).exists());
  }

  @Test
  void itGivesUpOnlyWhereNoneIsAsSmallAsAsked() {
    FitRules rules = new FitRules(24, 97, 1, 2.6, 1472, 20, false);
    for (int seed = 0; seed < 200; seed++) {
      Stack stack = stack(new SplittableRandom(seed), 97);
      double area = smallest(stack, rules, 2.5).areaPx2();
      Enclosure round = new SuperellipseEnclosure(2.5);
      assertTrue(round.smallest(stack, rules, area * 1.0001).exists(), "seed " + seed);
      assertFalse(round.smallest(stack, rules, area * 0.999).exists(), "seed " + seed);
    }
  }
}
