package io.github.readfall.type.balloon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.Endurance;
import io.github.readfall.type.font.OpenFaces;
import io.github.readfall.type.text.FaceChain;
import io.github.readfall.type.text.Languages;
import io.github.readfall.type.text.LineBox;
import io.github.readfall.type.text.LineBreaks;
import io.github.readfall.type.text.LineTable;
import io.github.readfall.type.text.Passage;
import io.github.readfall.type.text.SizedFace;
import io.github.readfall.type.text.StyledText;
import io.github.readfall.type.text.WordTable;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The search against trying every way to break a text. */
class FitterTest {

  private static final FitRules RULES = new FitRules(24, 97, 1, 2.6, 1472, 20, false);
  private static final FitRules WEIGHED = new FitRules(24, 97, 1, 2.6, 1472, 20, true);

  private static final double WIDEST_PX = 1472 - 2 * 24;

  private static final List<String> ARTICLES =
      List.of(
          "I TOLD YOU THE TIDE WON’T WAIT FOR A BOAT",
          "WHO PUT OUT THE LAMP IN THE OLD HOUSE BY THE PIER?",
          "SHE LEFT A NOTE ON THE DOOR OF THE SHED",
          "AN OAR IS NO USE WITHOUT A BOAT UNDER THE SAILOR",
          "BRING THE LANTERN AND A ROPE TO THE END OF THE QUAY",
          "THE KEEPER OF THE LIGHT HEARD A KNOCK AT THE DOOR TWICE");

  static Stream<Integer> seeds() {
    return IntStream.range(0, Endurance.rounds(100, 300)).boxed();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void ellipseIsAsSmallAsTryingEveryBreak(int seed) {
    assertAsGood(seed, new SuperellipseEnclosure(2.5));
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
      Stack stack = Stack.of(lines(table, bits).orElseThrow(), RULES.leadingPx());
      best = Math.min(best, enclosure.smallest(stack, RULES, best).areaPx2());
    }
    return best;
  }

  /** The lines that end where bits say; empty if one would be too wide to be in the table. */
  private static Optional<List<LineBox>> lines(LineTable table, int bits) {
    List<LineBox> lines = new ArrayList<>();
    int first = 0;
    for (int last = 0; last < table.size(); last++) {
      if (last > table.lastOf(first)) {
        return Optional.empty();
      }
      if (last == table.size() - 1 || (bits >> last & 1) == 1) {
        lines.add(table.box(first, last));
        first = last + 1;
      }
    }
    return Optional.of(lines);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void textKeepsItsMarginFromTheOutline(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<LineBox> lines = new ArrayList<>();
    for (int i = random.nextInt(1, 8); i > 0; i--) {
      lines.add(
          new LineBox(
              0, random.nextDouble(20, 900), -random.nextDouble(30, 80), random.nextDouble(0, 20)));
    }
    Stack stack = Stack.of(lines, 97);
    Enclosed e = new SuperellipseEnclosure(2.5).smallest(stack, RULES, Double.POSITIVE_INFINITY);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 20_000; i++) {
      double t = 2 * Math.PI * i / 20_000;
      double reach =
          Math.pow(
              Math.pow(Math.abs(Math.cos(t)), 2.5) + Math.pow(Math.abs(Math.sin(t)), 2.5), -0.4);
      double x = e.halfWidthPx() * Math.cos(t) * reach;
      double y = e.shiftPx() + e.halfHeightPx() * Math.sin(t) * reach;
      for (int line = 0; line < stack.lines(); line++) {
        double dx = Math.max(0, Math.abs(x) - stack.halfWidthPx(line));
        double dy = Math.max(0, Math.max(stack.topPx(line) - y, y - stack.bottomPx(line)));
        least = Math.min(least, Math.hypot(dx, dy));
      }
    }
    assertEquals(RULES.marginPx(), least, 0.02, "nearest ink to the outline");
    assertTrue(e.aspect() > 0.9999 * RULES.minAspect() && e.aspect() < 1.0001 * RULES.maxAspect());
  }

  /** Costs, rewards among them, against all 2^(n-1) ways to end lines. */
  @ParameterizedTest
  @MethodSource("seeds")
  void costsAreWeighedAsByTryingEveryBreak(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int n = seed < 20 ? 14 : random.nextInt(1, 13);
    double[] costs = random.doubles(n, -0.3, 0.6).map(c -> c < 0 ? c / 4 : c).toArray();
    LineTable table = WordTable.of(words(random, n), 25, Set.of(), costs, WIDEST_PX);
    Enclosure enclosure = seed % 2 == 0 ? new SuperellipseEnclosure(2.5) : new BoxEnclosure(1.8);
    Fit found = Fitter.fit(table, enclosure, WEIGHED).orElseThrow();
    double score = found.enclosed().areaPx2() * (1 + cost(found, costs));
    assertEquals(1, score / leastScore(table, enclosure, costs), 0.001);
  }

  private static double cost(Fit fit, double[] costs) {
    return fit.lastSegments().stream()
        .filter(last -> last < costs.length - 1)
        .mapToDouble(last -> costs[last])
        .sum();
  }

  private static double leastScore(LineTable table, Enclosure enclosure, double[] costs) {
    double best = Double.POSITIVE_INFINITY;
    for (int bits = 0; bits < 1 << (table.size() - 1); bits++) {
      double cost = 0;
      for (int i = 0; i < costs.length - 1; i++) {
        cost += (bits >> i & 1) == 1 ? costs[i] : 0;
      }
      Optional<List<LineBox>> lines = lines(table, bits);
      if (lines.isPresent()) {
        Stack stack = Stack.of(lines.get(), WEIGHED.leadingPx());
        double area = enclosure.smallest(stack, WEIGHED, best / (1 + cost)).areaPx2();
        best = Math.min(best, area * (1 + cost));
      }
    }
    return best;
  }

  /** In an outline that is given, a larger one never has worse breaks. */
  @ParameterizedTest
  @MethodSource("seeds")
  void moreRoomNeverMakesBreaksWorse(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int n = random.nextInt(2, 13);
    double[] costs = random.doubles(n, -0.1, 0.6).toArray();
    LineTable table = WordTable.of(words(random, n), 25, Set.of(), costs, WIDEST_PX);
    Enclosure enclosure = new SuperellipseEnclosure(2.5);
    FitRules given = WEIGHED.withAspect(1.5).withCostsFirst();
    double least =
        Fitter.fit(table, enclosure, RULES.withAspect(1.5)).orElseThrow().enclosed().areaPx2();
    double before = Double.POSITIVE_INFINITY;
    for (double share : new double[] {1.0001, 1.1, 1.3, 1.6, 2.5}) {
      Fit fit = Fitter.fit(table, enclosure, given, least * share).orElseThrow();
      assertTrue(fit.enclosed().areaPx2() <= least * share * 1.0001);
      double cost = cost(fit, costs);
      assertTrue(cost <= before + 2e-3, "seed " + seed + " at " + share);
      before = cost;
    }
  }

  /** Where breaks cost nothing, what a browser's balanced lines take is never less. */
  @ParameterizedTest
  @MethodSource("seeds")
  void theOutlineIsNoLargerThanThatOfBalancedLines(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int n = random.nextInt(2, 40);
    LineTable table = WordTable.of(words(random, n), 25, Set.of(), new double[n], WIDEST_PX);
    Enclosure enclosure = seed % 2 == 0 ? new SuperellipseEnclosure(2.5) : new BoxEnclosure(1.8);
    double found = Fitter.fit(table, enclosure, RULES).orElseThrow().enclosed().areaPx2();
    assertTrue(found <= balanced(table, enclosure) * 1.0001);
  }

  private static List<double[]> words(SplittableRandom random, int n) {
    return Stream.generate(() -> new double[] {random.nextDouble(20, 300), 59, 0})
        .limit(n)
        .toList();
  }

  /**
   * The least area over all numbers of lines, each at the least width that takes no more of them:
   * what {@code text-wrap: balance} makes of every width (CSS Text Level 4).
   */
  private static double balanced(LineTable table, Enclosure enclosure) {
    double best = Double.POSITIVE_INFINITY;
    int fewest = Integer.MAX_VALUE;
    for (double width : widths(table)) {
      List<LineBox> lines = greedy(table, width);
      if (lines.size() < fewest) {
        fewest = lines.size();
        Stack stack = Stack.of(lines, RULES.leadingPx());
        best = Math.min(best, enclosure.smallest(stack, RULES, best).areaPx2());
      }
    }
    return best;
  }

  /** Every width that a line can have, from that of the widest word upwards. */
  private static double[] widths(LineTable table) {
    return IntStream.range(0, table.size())
        .boxed()
        .flatMap(
            first ->
                IntStream.rangeClosed(first, table.lastOf(first))
                    .mapToObj(last -> table.box(first, last).width()))
        .mapToDouble(Double::doubleValue)
        .filter(width -> table.widerThan(width).isEmpty())
        .sorted()
        .toArray();
  }

  private static List<LineBox> greedy(LineTable table, double width) {
    List<LineBox> lines = new ArrayList<>();
    for (int first = 0, last; first < table.size(); first = last + 1) {
      last = first;
      while (last < table.lastOf(first) && table.box(first, last + 1).width() <= width) {
        last++;
      }
      lines.add(table.box(first, last));
    }
    return lines;
  }

  @ParameterizedTest
  @ValueSource(ints = {60, 200, 2000})
  void longTextsAreFitInBoundedStepsAndNoLargerThanBalanced(int n) {
    SplittableRandom random = new SplittableRandom(n);
    List<double[]> words = words(random, n);
    LineTable table = WordTable.of(words, 25, Set.of(), new double[n], WIDEST_PX);
    Fit fit =
        assertTimeoutPreemptively(
            Duration.ofSeconds(20),
            () -> Fitter.fit(table, new SuperellipseEnclosure(2.5), WEIGHED).orElseThrow());
    assertEquals(n - 1, fit.lastSegments().get(fit.lastSegments().size() - 1));
    double someWidth = Math.min(1000, Math.sqrt(n * 185.0 * 97 * 1.5));
    Stack stack = Stack.of(greedy(table, someWidth), RULES.leadingPx());
    double plain =
        new SuperellipseEnclosure(2.5).smallest(stack, WEIGHED, Double.POSITIVE_INFINITY).areaPx2();
    assertTrue(fit.enclosed().areaPx2() <= plain * 1.0001);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aForcedBreakIsKept(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int n = random.nextInt(2, 20);
    Set<Integer> forced =
        IntStream.range(0, n - 1)
            .filter(i -> random.nextInt(4) == 0)
            .boxed()
            .collect(Collectors.toSet());
    LineTable table = WordTable.of(words(random, n), 25, forced, new double[n], WIDEST_PX);
    Fit fit = Fitter.fit(table, new SuperellipseEnclosure(2.5), WEIGHED).orElseThrow();
    assertTrue(fit.lastSegments().containsAll(forced));
    assertEquals(fit.lastSegments().stream().sorted().distinct().toList(), fit.lastSegments());
    assertEquals(fit, Fitter.fit(table, new SuperellipseEnclosure(2.5), WEIGHED).orElseThrow());
  }

  @Test
  void aWordWiderThanAllowedFitsNowhere() {
    List<double[]> words = List.of(new double[] {90, 59, 0}, new double[] {1500, 59, 0});
    for (Enclosure enclosure : List.of(new SuperellipseEnclosure(2.5), new BoxEnclosure(1.8))) {
      assertTrue(Fitter.fit(WordTable.of(words, 25), enclosure, RULES).isEmpty());
    }
  }

  @Test
  void aLineMayNotEndInAnArticleThatCanStayWithItsNoun() throws Exception {
    SizedFace type = new SizedFace(OpenFaces.regular("Grandstander"), 84, 0);
    FaceChain chain = new OneFaceChain(type);
    int mended = 0;
    for (String text : ARTICLES) {
      Passage passage =
          Passage.of(
              text,
              Languages.of("en"),
              List.of(new StyledText(0, text.length(), chain)),
              0,
              new LineBreaks());
      LineTable table = passage.measure(WIDEST_PX);
      Fit plain = Fitter.fit(table, new SuperellipseEnclosure(2.5), RULES).orElseThrow();
      Fit weighed = Fitter.fit(table, new SuperellipseEnclosure(2.5), WEIGHED).orElseThrow();
      assertTrue(articlesAtEnds(passage, weighed) <= articlesAtEnds(passage, plain), text);
      mended += articlesAtEnds(passage, plain) - articlesAtEnds(passage, weighed);
      assertTrue(weighed.enclosed().areaPx2() >= plain.enclosed().areaPx2() * 0.9999);
    }
    assertTrue(mended > 0, "no article was moved to its noun");
  }

  private static int articlesAtEnds(Passage passage, Fit fit) {
    return (int)
        fit.lastSegments().stream()
            .map(passage::word)
            .filter(word -> List.of("THE", "A", "AN").contains(word))
            .count();
  }

  private record OneFaceChain(SizedFace preferred) implements FaceChain {
    @Override
    public SizedFace choose(String cluster, SizedFace inUse) {
      return preferred;
    }
  }
}
