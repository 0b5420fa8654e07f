package io.github.readfall.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.plan.Block.Pause;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SplitterTest {

  private static final List<Pause> PAUSES = List.of(Pause.SCENE, Pause.PANEL, Pause.EXCHANGE);
  private static final Map<Pause, Double> COSTS =
      Map.of(Pause.SCENE, 0.0, Pause.PANEL, 0.25, Pause.EXCHANGE, 0.35);

  /** Blocks of these heights one under another; a scene begins where the height is negative. */
  private static List<Block> blocks(int... heights) {
    List<Block> blocks = new ArrayList<>();
    int top = 0;
    for (int i = 0; i < heights.length; i++) {
      Pause pause = heights[i] < 0 ? Pause.SCENE : Pause.PANEL;
      blocks.add(new Block(top, top + Math.abs(heights[i]), i + 1, i + 1, pause));
      top += Math.abs(heights[i]);
    }
    return blocks;
  }

  private static Optional<List<Integer>> split(int parts, double limitPx, int... heights) {
    return new Splitter(blocks(heights), limitPx, 0).into(parts);
  }

  @Test
  void partsComeOutEven() {
    assertEquals(Optional.of(List.of(0, 2)), split(2, 1000, -10, 10, 10, 10));
  }

  @Test
  void aScenesEndIsWorthSomeUnevenness() {
    assertEquals(Optional.of(List.of(0, 1)), split(2, 1000, -35, -15, 25, 25));
    assertEquals(Optional.of(List.of(0, 2)), split(2, 1000, -25, -25, 25, 25));
    assertEquals(Optional.of(List.of(0, 2)), split(2, 1000, -10, -40, 25, 25));
  }

  @Test
  void theLimitIsWorthMoreThanAScenesEnd() {
    assertEquals(Optional.of(List.of(0, 2)), split(2, 50, -35, -15, 25, 25));
  }

  @Test
  void thereAreNoMorePartsThanBlocks() {
    assertEquals(Optional.empty(), split(3, 50, -35, -15));
    assertEquals(Optional.of(List.of(0, 1)), split(2, 1, -35, -15));
  }

  @Test
  void theFewestPartsFillTheLimit() {
    assertEquals(2, new Splitter(blocks(-50, 50, 50, 50), 100, 0).fewestParts());
    assertEquals(4, new Splitter(blocks(-50, 51, 50, 51), 100, 0).fewestParts());
    assertEquals(4, new Splitter(blocks(-50, 50, 50, 50), 100, 1).fewestParts());
  }

  static IntStream seeds() {
    return IntStream.range(0, 60);
  }

  /** Of few blocks every way to split can be tried. */
  @ParameterizedTest
  @MethodSource("seeds")
  void isAsGoodAsTryingEveryWay(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int count = random.nextInt(2, 11);
    List<Block> blocks = new ArrayList<>();
    double top = 0;
    for (int i = 0; i < count; i++) {
      double bottom = top + random.nextInt(5, 60);
      Pause pause = PAUSES.get(random.nextInt(3));
      blocks.add(new Block(top, bottom, i + 1, i + 1, pause));
      top = bottom + random.nextInt(10);
    }
    int parts = random.nextInt(2, count + 1);
    double limitPx = random.nextDouble(20, 120);
    double best =
        IntStream.range(0, 1 << (count - 1))
            .filter(bits -> Integer.bitCount(bits) == parts - 1)
            .mapToObj(SplitterTest::starts)
            .mapToDouble(starts -> cost(starts, blocks, limitPx))
            .min()
            .orElseThrow();
    List<Integer> found = new Splitter(blocks, limitPx, 4).into(parts).orElseThrow();
    assertEquals(best, cost(found, blocks, limitPx), 1e-9);
  }

  private static List<Integer> starts(int bits) {
    List<Integer> starts = new ArrayList<>(List.of(0));
    IntStream.range(0, 31).filter(bit -> (bits >> bit & 1) == 1).forEach(b -> starts.add(b + 1));
    return starts;
  }

  /** A part above the limit outweighs everything; the rest as the page on planning has it. */
  private static double cost(List<Integer> starts, List<Block> blocks, double limitPx) {
    double whole = blocks.get(blocks.size() - 1).bottomPx() - blocks.get(0).topPx() + 4;
    double cost = 0;
    for (int i = 0; i < starts.size(); i++) {
      int next = i + 1 < starts.size() ? starts.get(i + 1) : blocks.size();
      double height = blocks.get(next - 1).bottomPx() - blocks.get(starts.get(i)).topPx() + 4;
      double uneven = height * starts.size() / whole - 1;
      cost += uneven * uneven + (height > limitPx ? 1e6 : 0);
      cost += i == 0 ? 0 : COSTS.getOrDefault(blocks.get(starts.get(i)).before(), 1e9);
    }
    return cost;
  }

  private static final String TWO_SCENES =
      """
      SCENE Mill

      PANEL  long shot

      ILSE: It is counting again.

      PANEL  close-up, inset

      OTTO: Again?

      SCENE Harbour

      PANEL  long shot

      OTTO: It has stopped.

      PANEL  medium shot
      """;

  @Test
  void anInsetStaysWithItsPanelAndTheReasonIsSaid() {
    SetEpisode set = Planned.set(TWO_SCENES);
    Split split =
        EpisodePlanner.plan(set, Optional.empty(), OptionalInt.of(2)).split().orElseThrow();
    assertEquals(List.of(1, 3), split.firstPanels());
    assertEquals("The scene \"Harbour\" begins here.", split.parts().get(1).reason());
    assertEquals(5, split.parts().get(0).words());
    Split three =
        EpisodePlanner.plan(set, Optional.empty(), OptionalInt.of(3)).split().orElseThrow();
    assertEquals(List.of(1, 3, 4), three.firstPanels());
    assertTrue(
        three.parts().get(2).reason().contains("here the scene \"Harbour\" goes on"),
        three.parts().get(2).reason());
  }

  @Test
  void anEpisodeWithinTheLimitIsNotSplitUnasked() {
    SetEpisode set = Planned.set(TWO_SCENES);
    assertEquals(
        Optional.empty(), EpisodePlanner.plan(set, Optional.empty(), OptionalInt.empty()).split());
  }

  @Test
  void anEpisodeAboveTheLimitIsSplitIntoPartsThatFit() {
    SetEpisode set = Planned.set(TWO_SCENES, "[delivery]\nmax-episode-height = 2000");
    EpisodePlan plan = EpisodePlanner.plan(set, Optional.empty(), OptionalInt.empty());
    assertEquals("plan/too-tall", plan.findings().get(0).rule());
    assertTrue(plan.split().orElseThrow().fits());
    assertEquals(
        plan.heightPx() * 900 / 1600,
        plan.findings().get(0).measurement().orElseThrow().measured(),
        1e-9);
  }
}
