package io.github.readfall.balloon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.text.LineBox;
import io.github.readfall.text.LineTable;
import io.github.readfall.text.WordTable;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The search against trying every way to break a text. */
class FitterTest {

  private static final FitRules RULES = new FitRules(24, 97, 1, 2.6, 1472, 20, false);

  static Stream<Integer> seeds() {
    return IntStream.range(0, 300).boxed();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void ellipseIsAsSmallAsTryingEveryBreak(int seed) {
    assertAsGood(seed, new EllipseEnclosure());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void boxIsAsSmallAsTryingEveryBreak(int seed) {
    assertAsGood(seed, new BoxEnclosure(seed % 2 == 0 ? 1 : 2.2));
  }

  private static void assertAsGood(int seed, Enclosure enclosure) {
    SplittableRandom random = new SplittableRandom(seed);
    boolean capitals = random.nextBoolean();
    List<double[]> words = new ArrayList<>();
    int n = seed < 20 ? 14 : random.nextInt(1, 13);
    for (int i = 0; i < n; i++) {
      double ascent = capitals ? 59 : random.nextDouble(40, 72);
      double descent = capitals ? 0 : random.nextDouble(-8, 22);
      words.add(new double[] {random.nextDouble(20, 420), ascent, descent});
    }
    LineTable table = WordTable.of(words, 25);
    double found = Fitter.fit(table, enclosure, RULES).orElseThrow().enclosed().areaPx2();
    double best = everyWay(table, enclosure);
    assertEquals(1, found / best, 0.001);
  }

  /** The least area over all 2^(n-1) ways to end lines. */
  private static double everyWay(LineTable table, Enclosure enclosure) {
    double best = Double.POSITIVE_INFINITY;
    for (int bits = 0; bits < 1 << (table.size() - 1); bits++) {
      List<LineBox> lines = new ArrayList<>();
      int first = 0;
      for (int last = 0; last < table.size(); last++) {
        if (last == table.size() - 1 || (bits >> last & 1) == 1) {
          lines.add(table.box(first, last));
          first = last + 1;
        }
      }
      Stack stack = Stack.of(lines, RULES.leadingPx());
      best = Math.min(best, enclosure.smallest(stack, RULES, best).areaPx2());
    }
    return best;
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void textKeepsItsMarginFromTheEllipse(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<LineBox> lines = new ArrayList<>();
    for (int i = random.nextInt(1, 8); i > 0; i--) {
      lines.add(
          new LineBox(
              0, random.nextDouble(20, 900), -random.nextDouble(30, 80), random.nextDouble(0, 20)));
    }
    Stack stack = Stack.of(lines, 97);
    Enclosed e = new EllipseEnclosure().smallest(stack, RULES, Double.POSITIVE_INFINITY);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 20_000; i++) {
      double t = 2 * Math.PI * i / 20_000;
      double x = e.halfWidthPx() * Math.cos(t);
      double y = e.shiftPx() + e.halfHeightPx() * Math.sin(t);
      for (int line = 0; line < stack.lines(); line++) {
        double dx = Math.max(0, Math.abs(x) - stack.halfWidthPx(line));
        double dy = Math.max(0, Math.max(stack.topPx(line) - y, y - stack.bottomPx(line)));
        least = Math.min(least, Math.hypot(dx, dy));
      }
    }
    assertEquals(RULES.marginPx(), least, 0.02, "nearest ink to the outline");
    assertTrue(e.aspect() > 0.9999 * RULES.minAspect() && e.aspect() < 1.0001 * RULES.maxAspect());
  }
}
