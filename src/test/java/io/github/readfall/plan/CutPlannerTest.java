package io.github.readfall.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.lettering.style.Delivery;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.plan.Obstacle.Kind;
import io.github.readfall.strip.Cuts;
import io.github.readfall.strip.Layout;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CutPlannerTest {

  private static Obstacle panel(double top, double bottom) {
    return new Obstacle(top, bottom, Kind.PANEL);
  }

  private static Obstacle balloon(double top, double bottom) {
    return new Obstacle(top, bottom, Kind.BALLOON);
  }

  @Test
  void aStripThatIsOnePieceIsNotCut() {
    assertEquals(List.of(), CutPlanner.plan(100, 100, List.of(panel(0, 100))));
    assertEquals(List.of(), CutPlanner.plan(0, 100, List.of()));
  }

  @Test
  void aCutFallsIntoTheMiddleOfAGutter() {
    assertEquals(List.of(85.0), CutPlanner.plan(150, 100, List.of(panel(0, 80), panel(90, 150))));
  }

  @Test
  void aPanelIsCutRatherThanABalloon() {
    assertEquals(
        List.of(50.0),
        CutPlanner.plan(150, 100, List.of(panel(0, 150), balloon(10, 45), balloon(55, 140))));
  }

  @Test
  void anEdgeIsNotCrossed() {
    assertEquals(
        List.of(100.0), CutPlanner.plan(200, 100, List.of(panel(0, 100), panel(100, 200))));
  }

  @Test
  void whatIsTallerThanAPieceIsCutWhereItMustBe() {
    assertEquals(List.of(100.0, 200.0), CutPlanner.plan(300, 100, List.of(balloon(0, 300))));
  }

  @Test
  void noPieceIsLessThanAPixel() {
    assertThrows(IllegalArgumentException.class, () -> CutPlanner.plan(10, 0.5, List.of()));
  }

  static IntStream seeds() {
    return IntStream.range(0, 60);
  }

  /** What counts first: balloons, panels, pieces. */
  private record Cost(int balloons, int panels, int pieces) implements Comparable<Cost> {

    static Cost of(List<Integer> cuts, List<Obstacle> obstacles) {
      return new Cost(
          crossed(cuts, obstacles, Kind.BALLOON),
          crossed(cuts, obstacles, Kind.PANEL),
          cuts.size() + 1);
    }

    private static int crossed(List<Integer> cuts, List<Obstacle> obstacles, Kind kind) {
      return (int)
          obstacles.stream()
              .filter(o -> o.kind() == kind)
              .mapToLong(o -> cuts.stream().filter(y -> o.topPx() < y && y < o.bottomPx()).count())
              .sum();
    }

    @Override
    public int compareTo(Cost other) {
      int first = Integer.compare(balloons, other.balloons);
      int second = Integer.compare(panels, other.panels);
      return first != 0 ? first : second != 0 ? second : Integer.compare(pieces, other.pieces);
    }
  }

  /** On a short strip every set of cuts can be tried. */
  @ParameterizedTest
  @MethodSource("seeds")
  void isAsGoodAsTryingEverySetOfCuts(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int height = random.nextInt(6, 15);
    int max = random.nextInt(1, height);
    List<Obstacle> obstacles = new ArrayList<>();
    for (int i = random.nextInt(6); i >= 0; i--) {
      int top = random.nextInt(height);
      Kind kind = random.nextBoolean() ? Kind.PANEL : Kind.BALLOON;
      obstacles.add(new Obstacle(top, random.nextInt(top, height + 1), kind));
    }
    Cost best =
        IntStream.range(0, 1 << (height - 1))
            .mapToObj(CutPlannerTest::cuts)
            .filter(cuts -> piecesFit(cuts, height, max))
            .map(cuts -> Cost.of(cuts, obstacles))
            .min(Cost::compareTo)
            .orElseThrow();
    List<Integer> planned =
        CutPlanner.plan(height, max, obstacles).stream().map(Double::intValue).toList();
    assertTrue(piecesFit(planned, height, max), planned + " of " + height + " by " + max);
    assertEquals(best, Cost.of(planned, obstacles));
  }

  private static List<Integer> cuts(int bits) {
    return IntStream.range(0, 31)
        .filter(bit -> (bits >> bit & 1) == 1)
        .mapToObj(bit -> bit + 1)
        .toList();
  }

  private static boolean piecesFit(List<Integer> cuts, int height, int max) {
    int before = 0;
    for (int cut : cuts) {
      if (cut <= before || cut - before > max) {
        return false;
      }
      before = cut;
    }
    return height > before && height - before <= max;
  }

  @Test
  void aLongStripIsCutInAMoment() {
    SplittableRandom random = new SplittableRandom(7);
    List<Obstacle> obstacles = new ArrayList<>();
    for (int i = 0; i < 1000; i++) {
      obstacles.add(panel(i * 300 + 10, i * 300 + 290 + random.nextInt(20)));
      obstacles.add(balloon(i * 300 + random.nextInt(40), i * 300 + 100));
      obstacles.add(balloon(i * 300 + 150 + random.nextInt(40), i * 300 + 250));
    }
    List<Double> cuts =
        assertTimeoutPreemptively(
            Duration.ofSeconds(2), () -> CutPlanner.plan(300_000, 3553, obstacles));
    assertTrue(cuts.size() >= 84, cuts.size() + " cuts");
  }

  @Test
  void cutsOfTheLayoutStayAsTheyAre() {
    HouseStyle style = HouseStyle.DEFAULT;
    Layout planned = Layout.of(1600, 40_000, List.of());
    Cuts free = StripCuts.of(planned, List.of(), style);
    assertEquals(2, free.pages().size());
    Layout given =
        new Layout(
            1600,
            40_000,
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            Optional.of(List.of(7.0)),
            planned.extra());
    Cuts kept = StripCuts.of(given, List.of(), style);
    assertEquals(List.of(7.0), kept.pages());
    assertTrue(kept.pagesGiven());
    assertEquals(free.slices(), kept.slices());
  }

  /** At 900 px the strip's cuts, rounded, leave no slice above 2000 px. */
  @Test
  void slicesStayWithinThePublishersPixels() {
    Delivery delivery = HouseStyle.DEFAULT.delivery();
    List<Double> slices =
        StripCuts.of(Layout.of(1600, 123_457, List.of()), List.of(), HouseStyle.DEFAULT).slices();
    double before = 0;
    for (double cut : slices) {
      double px = Math.rint(cut * 900 / 1600) - before;
      assertTrue(px <= delivery.maxSliceHeightPx(), px + " px");
      before = Math.rint(cut * 900 / 1600);
    }
    assertEquals(34, slices.size());
  }
}
