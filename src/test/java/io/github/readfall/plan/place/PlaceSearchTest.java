package io.github.readfall.plan.place;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.art.DetailMap;
import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.Sample;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.plan.Spacing;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.type.font.FontShelf;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** On tiny strips every choice of places can be tried, so the clever way must match it. */
class PlaceSearchTest {

  private static final FontShelf SHELF = Sample.shelf();
  private static final Spacing SPACING = Spacing.of(HouseStyle.DEFAULT);
  private static final List<String> SAID =
      List.of("Hm.", "It is late.", "Nobody had turned the wheel since spring.", "Run!", "Why me?");

  private static final int PLACES = 7;

  static Stream<Integer> seeds() {
    return IntStream.range(0, 120).boxed();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void isAsGoodAsTryingEveryPlace(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Pairs pairs = new Pairs(SPACING, random.nextBoolean());
    List<Candidates> makers = makers(random, pairs);
    List<List<Candidate>> candidates = new ArrayList<>();
    List<Double> tops = makers.stream().map(Candidates::idealTopPx).toList();
    makers.forEach(maker -> candidates.add(some(maker.all(tops), random)));
    List<Candidate> found =
        new PlaceSearch(
                makers.stream().map(Candidates::item).toList(),
                makers.stream().map(Candidates::area).toList(),
                candidates,
                pairs)
            .cheapest();
    double least = exhaustive(makers, candidates, pairs, new ArrayList<>());
    assertEquals(least, cost(makers, found, pairs), 1e-6 * Math.max(1, least));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void adjustingNeverCostsMore(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Pairs pairs = new Pairs(SPACING, true);
    List<Candidates> makers = makers(random, pairs);
    List<Double> tops = makers.stream().map(Candidates::idealTopPx).toList();
    List<Candidate> start = new ArrayList<>();
    makers.forEach(maker -> start.add(some(maker.all(tops), random).get(0)));
    List<Candidate> adjusted = new AdjustSearch(makers, start, pairs).adjusted();
    assertTrue(total(makers, adjusted, pairs) <= total(makers, start, pairs) + 1e-9);
  }

  /** Three or four balloons in one or two panels of random height. */
  private static List<Candidates> makers(SplittableRandom random, Pairs pairs) {
    int balloons = 2 + random.nextInt(3);
    List<String> cues = new ArrayList<>();
    for (int i = 0; i < balloons; i++) {
      String name = random.nextInt(4) == 0 ? "CAPTION" : random.nextBoolean() ? "ILSE" : "WOUTER";
      cues.add(name + ": " + SAID.get(random.nextInt(SAID.size())));
    }
    List<SetBalloon> set = Sample.set(SHELF, "en", cues.toArray(String[]::new));
    double height = 500 + random.nextInt(1500);
    PanelBox panel = new PanelBox(1, new Box(60, 100, 700 + random.nextInt(800), height));
    Layout layout = Layout.of(1600, height + 400, List.of(panel));
    PlacementArea area = PlacementArea.of(panel, layout, 64, SPACING);
    List<PlacementItem> items = PlacementItems.of(set, Map.of());
    Sides sides = Sides.of(items, Map.of(), pairs.leftToRight());
    List<Double> tops = Spread.tops(items, area, SPACING);
    return IntStream.range(0, items.size())
        .mapToObj(i -> candidates(items.get(i), area, sides, tops.get(i)))
        .toList();
  }

  private static Candidates candidates(
      PlacementItem item, PlacementArea area, Sides sides, double topPx) {
    return new Candidates(item, area, SPACING, sides, topPx, DetailMap.NONE);
  }

  private static List<Candidate> some(List<Candidate> all, SplittableRandom random) {
    List<Candidate> some = new ArrayList<>();
    for (int i = 0; i < PLACES; i++) {
      some.add(all.get(random.nextInt(all.size())));
    }
    return some;
  }

  private static double exhaustive(
      List<Candidates> makers,
      List<List<Candidate>> candidates,
      Pairs pairs,
      List<Candidate> chosen) {
    int next = chosen.size();
    if (next == makers.size()) {
      return cost(makers, chosen, pairs);
    }
    double least = Double.POSITIVE_INFINITY;
    for (Candidate candidate : candidates.get(next)) {
      chosen.add(candidate);
      least = Math.min(least, exhaustive(makers, candidates, pairs, chosen));
      chosen.remove(next);
    }
    return least;
  }

  /** What the search promises to make least: each item, its neighbour, and its second neighbour. */
  private static double cost(List<Candidates> makers, List<Candidate> places, Pairs pairs) {
    double cost = 0;
    for (int i = 0; i < places.size(); i++) {
      cost += places.get(i).cost();
      for (int back = 1; back <= 2 && i - back >= 0; back++) {
        Candidate before = places.get(i - back);
        cost +=
            pairs.cost(makers.get(i - back).item(), before, makers.get(i).item(), places.get(i));
        cost += back == 2 ? pairs.besideThird(before, places.get(i)) : 0;
      }
    }
    return cost;
  }

  private static double total(List<Candidates> makers, List<Candidate> places, Pairs pairs) {
    double cost = 0;
    for (int i = 0; i < places.size(); i++) {
      cost += places.get(i).cost();
      for (int j = 0; j < i; j++) {
        cost +=
            pairs.cost(makers.get(j).item(), places.get(j), makers.get(i).item(), places.get(i));
      }
    }
    return cost;
  }
}
