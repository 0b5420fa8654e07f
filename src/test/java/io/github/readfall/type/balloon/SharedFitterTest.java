package io.github.readfall.type.balloon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.Endurance;
import io.github.readfall.type.text.LineBox;
import io.github.readfall.type.text.LineTable;
import io.github.readfall.type.text.WordTable;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** One outline for several texts against every way to break each of them. */
class SharedFitterTest {

  private static final double MIN_ASPECT = 1;
  private static final double MAX_ASPECT = 2.6;
  private static final double MAX_WIDTH_PX = 1472;
  private static final int ASPECTS = 400;

  static Stream<Integer> seeds() {
    return IntStream.range(0, Endurance.rounds(30, 120)).boxed();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void ellipseIsAsSmallAsTryingEveryBreakAtEveryAspect(int seed) {
    assertAsGood(seed, new SuperellipseEnclosure(2.5));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void boxIsAsSmallAsTryingEveryBreakAtEveryAspect(int seed) {
    assertAsGood(seed, new BoxEnclosure(seed % 2 == 0 ? 1 : 2.2));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everyTextGoesIntoIt(int seed) {
    Enclosure enclosure = seed % 2 == 0 ? new SuperellipseEnclosure(2.5) : new BoxEnclosure(1.8);
    List<FitText> texts = texts(seed, true);
    Enclosed shared = SharedFitter.fit(texts, enclosure).orElseThrow().enclosed();
    for (FitText text : texts) {
      double need = smallestAt(text, enclosure, shared.aspect());
      assertTrue(need <= shared.areaPx2() * (1 + 1e-6), "one text sticks out");
    }
  }

  @Test
  void aTextByItselfHasTheOutlineItHasAnyway() {
    FitText text = texts(7, true).get(0);
    Enclosure enclosure = new SuperellipseEnclosure(2.5);
    Fit alone = Fitter.fit(text.table(), enclosure, text.rules()).orElseThrow();
    SharedFit shared = SharedFitter.fit(List.of(text, text), enclosure).orElseThrow();
    assertEquals(alone.enclosed(), shared.enclosed());
  }

  @Test
  void theLongestTextDecides() {
    FitText brief = text(List.of(100.0, 90.0), 97, false);
    FitText wordy = text(List.of(300.0, 280.0, 310.0, 250.0, 290.0), 97, false);
    SharedFit shared =
        SharedFitter.fit(List.of(brief, wordy, brief), new SuperellipseEnclosure(2.5))
            .orElseThrow();
    assertEquals(1, shared.decidedBy());
  }

  @Test
  void oneUnbreakableWordTooWideForTheStripHasNoOutline() {
    FitText fits = text(List.of(100.0), 97, false);
    FitText endless = text(List.of(MAX_WIDTH_PX + 1), 97, false);
    assertTrue(SharedFitter.fit(List.of(fits, endless), new SuperellipseEnclosure(2.5)).isEmpty());
  }

  private static void assertAsGood(int seed, Enclosure enclosure) {
    List<FitText> texts = texts(seed, false);
    double found = SharedFitter.fit(texts, enclosure).orElseThrow().enclosed().areaPx2();
    double ratio = found / everyWay(texts, enclosure); // below 1 between the aspects it tries
    assertTrue(ratio < 1.001 && ratio > 0.998, "ratio " + ratio);
  }

  private static List<FitText> texts(int seed, boolean weighed) {
    SplittableRandom random = new SplittableRandom(seed);
    return IntStream.range(0, random.nextInt(2, 5))
        .mapToObj(
            i ->
                text(
                    random.doubles(random.nextInt(1, 9), 40, 330).boxed().toList(),
                    random.nextDouble(80, 130),
                    weighed))
        .toList();
  }

  private static FitText text(List<Double> widths, double leadingPx, boolean weighed) {
    LineTable table =
        WordTable.of(widths.stream().map(width -> new double[] {width, 59, 0}).toList(), 25);
    return new FitText(
        table, new FitRules(24, leadingPx, MIN_ASPECT, MAX_ASPECT, MAX_WIDTH_PX, 20, weighed));
  }

  /** The least area at which some aspect holds some breaking of every text. */
  private static double everyWay(List<FitText> texts, Enclosure enclosure) {
    double best = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= ASPECTS; i++) {
      double aspect = MIN_ASPECT * Math.pow(MAX_ASPECT / MIN_ASPECT, (double) i / ASPECTS);
      double needed = 0;
      for (FitText text : texts) {
        needed = Math.max(needed, smallestAt(text, enclosure, aspect));
      }
      best = Math.min(best, needed);
    }
    return best;
  }

  private static double smallestAt(FitText text, Enclosure enclosure, double aspect) {
    FitRules rules = text.rules().withAspect(aspect);
    LineTable table = text.table();
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
      Enclosed found = enclosure.smallest(Stack.of(lines, rules.leadingPx()), rules, best);
      best = Math.min(best, found.areaPx2());
    }
    return best;
  }
}
