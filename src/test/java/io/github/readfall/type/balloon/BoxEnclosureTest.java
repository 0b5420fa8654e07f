package io.github.readfall.type.balloon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.geom.Flattened;
import io.github.readfall.base.geom.XY;
import io.github.readfall.type.text.LineBox;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Boxes with round corners, against their drawn outline and against every width there could be. */
class BoxEnclosureTest {

  private static final FitRules RULES = new FitRules(24, 97, 1, 2.6, 1472, 20, false);
  private static final double ROUNDED = 1.8; // of ShapeKind.ROUNDED_BOX
  private static final double SAMPLED_PX = 0.05;
  private static final int WIDTHS = 500;

  static Stream<Integer> seeds() {
    return IntStream.range(0, 100).boxed();
  }

  private static Stack stack(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<LineBox> lines = new ArrayList<>();
    double widest = random.nextBoolean() ? 900 : 200;
    for (int i = random.nextInt(1, 8); i > 0; i--) {
      lines.add(
          new LineBox(
              0,
              random.nextDouble(15, widest),
              -random.nextDouble(45, 80),
              random.nextDouble(0, 20)));
    }
    return Stack.of(lines, 97);
  }

  private static OutlineStyle style() {
    return new OutlineStyle(RULES.marginPx(), RULES.marginPx(), OutlineStyle.SQUARENESS, 0);
  }

  private static Enclosed smallest(Stack stack, double radiusMargins) {
    return new BoxEnclosure(radiusMargins).smallest(stack, RULES, Double.POSITIVE_INFINITY);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void textKeepsItsMarginFromTheDrawnOutlineAndNoMore(int seed) {
    Stack stack = stack(seed);
    Enclosed box = smallest(stack, ROUNDED);
    List<XY> outline = Flattened.evenly(ShapeKind.ROUNDED_BOX.outline(box, style()), 200);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < outline.size(); i++) {
      XY from = outline.get(i);
      XY to = outline.get((i + 1) % outline.size());
      for (XY corner : corners(stack)) {
        least = Math.min(least, distance(corner, from, to));
      }
    }
    assertTrue(least >= RULES.marginPx() - SAMPLED_PX, "nearest " + least);
    boolean atAnEdge = box.aspect() < 1.0001 || box.aspect() > 2.5999;
    assertTrue(atAnEdge || least <= RULES.marginPx() + SAMPLED_PX, "nearest " + least);
  }

  private static List<XY> corners(Stack stack) {
    List<XY> corners = new ArrayList<>();
    for (int line = 0; line < stack.lines(); line++) {
      for (int side = -1; side <= 1; side += 2) {
        corners.add(new XY(side * stack.halfWidthPx(line), stack.topPx(line)));
        corners.add(new XY(side * stack.halfWidthPx(line), stack.bottomPx(line)));
      }
    }
    return corners;
  }

  private static double distance(XY point, XY from, XY to) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double length = dx * dx + dy * dy;
    double along = (point.x() - from.x()) * dx + (point.y() - from.y()) * dy;
    double share = length == 0 ? 0 : Math.max(0, Math.min(1, along / length));
    return point.distanceTo(from.towards(to, share));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void noOtherWidthMakesASmallerBox(int seed) {
    Stack stack = stack(seed);
    for (double radius : new double[] {0, 1, ROUNDED}) {
      Enclosed box = smallest(stack, radius);
      double theirs = leastArea(stack, radius);
      assertTrue(box.areaPx2() <= theirs * 1.002, () -> radius + ": " + box.areaPx2() / theirs);
      assertTrue(box.areaPx2() >= theirs * 0.99, () -> radius + ": " + box.areaPx2() / theirs);
    }
  }

  private static double leastArea(Stack stack, double radius) {
    List<XY> corners = corners(stack);
    double least = Double.POSITIVE_INFINITY;
    double from = stack.halfWidthPx() + RULES.marginPx();
    double to = Math.max(1.3 * from, 1.1 * (stack.halfHeightPx() + RULES.marginPx()));
    for (int i = 0; i <= WIDTHS; i++) {
      double a = from + (to - from) * i / WIDTHS;
      double low = a / RULES.maxAspect();
      double high = a / RULES.minAspect();
      if (a <= RULES.maxWidthPx() / 2 && holds(corners, a, high, radius)) {
        for (int halving = 0; halving < 30; halving++) {
          double b = (low + high) / 2;
          boolean holds = holds(corners, a, b, radius);
          low = holds ? low : b;
          high = holds ? b : high;
        }
        least = Math.min(least, 4 * a * high);
      }
    }
    return least;
  }

  /** By the distance to a box with round corners, negative inside. */
  private static boolean holds(List<XY> corners, double a, double b, double radiusMargins) {
    double r = Math.min(radiusMargins * RULES.marginPx(), Math.min(a, b));
    for (XY corner : corners) {
      double x = Math.abs(corner.x()) - (a - r);
      double y = Math.abs(corner.y()) - (b - r);
      double outside = Math.hypot(Math.max(x, 0), Math.max(y, 0)) + Math.min(Math.max(x, y), 0) - r;
      if (outside > -RULES.marginPx() + 1e-9) {
        return false;
      }
    }
    return true;
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.5, 1})
  void cornersNoRounderThanTheMarginTakeNoRoom(double radiusMargins) {
    Stack stack = Stack.of(List.of(new LineBox(0, 200, -59, 0), new LineBox(0, 180, -59, 0)), 97);
    Enclosed box = smallest(stack, radiusMargins);
    assertEquals(100 + 24, box.halfWidthPx(), 1e-9);
    assertEquals((97 + 59) / 2.0 + 24, box.halfHeightPx(), 1e-9);
    assertEquals(0, box.shiftPx());
  }

  @Test
  void noneIsWiderThanAllowed() {
    Stack stack = Stack.of(List.of(new LineBox(0, 1430, -59, 0)), 97);
    assertFalse(smallest(stack, 0).exists());
    Stack fits = Stack.of(List.of(new LineBox(0, 1420, -59, 0)), 97);
    assertTrue(smallest(fits, 0).exists());
  }
}
