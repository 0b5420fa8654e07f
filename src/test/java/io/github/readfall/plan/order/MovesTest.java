package io.github.readfall.plan.order;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.correlation.KendallsCorrelation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MovesTest {

  @ParameterizedTest
  @CsvSource({
    "0 2 1 3 5 4 6, 2, 0.809524, 2",
    "3 0 1 2 4, 3, 0.4, 1",
    "4 3 2 1 0, 10, -1, 4",
    "1 2 3 4 0, 4, 0.2, 1",
    "0 1 2, 0, 1, 0",
    "0, 0, 1, 0",
  })
  void workedByHand(String order, long inversions, double tau, int moves) {
    List<Integer> met = Arrays.stream(order.split(" ", -1)).map(Integer::valueOf).toList();
    Kendall kendall = Kendall.of(met);
    assertEquals(inversions, kendall.inversions());
    assertEquals(tau, kendall.tau(), 5e-7);
    assertEquals(moves, Moves.smallest(met, i -> false).size());
  }

  /** Another implementation: KendallsCorrelation of Apache Commons Math 3.6.1. */
  @Test
  void tauIsWhatCommonsMathSays() {
    for (int seed = 0; seed < 300; seed++) {
      List<Integer> met = shuffled(2 + seed, seed);
      double[] places = IntStream.range(0, met.size()).asDoubleStream().toArray();
      double[] values = met.stream().mapToDouble(Integer::doubleValue).toArray();
      double tau = new KendallsCorrelation().correlation(places, values);
      assertEquals(tau, Kendall.of(met).tau(), 1e-12, "seed " + seed);
      assertEquals(counted(met), Kendall.of(met).inversions(), "seed " + seed);
    }
  }

  private static long counted(List<Integer> met) {
    return IntStream.range(0, met.size())
        .mapToLong(
            i -> IntStream.range(i + 1, met.size()).filter(j -> met.get(i) > met.get(j)).count())
        .sum();
  }

  /** Every subset that could stay, tried: most pinned ones, then most, then the earliest. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void noSmallerSetOfMovesWouldDo(int size) {
    for (int seed = 0; seed < 40; seed++) {
      List<Integer> met = shuffled(size, seed);
      Random random = new Random(seed);
      int pins = seed % 2 == 0 ? 0 : random.nextInt(1 << size);
      List<Integer> moved = Moves.smallest(met, i -> (pins >> i & 1) == 1);
      assertEquals(bestByTrial(met, pins), moved, "met " + met + " pinned " + pins);
    }
  }

  @Test
  void ofSetsAsSmallThatIsMovedWhichIsNotAtHome() {
    List<Integer> met = List.of(1, 0, 2);
    assertEquals(List.of(1), Moves.smallest(met, i -> false, i -> true));
    assertEquals(List.of(0), Moves.smallest(met, i -> false, i -> i != 0));
    assertEquals(List.of(1), Moves.smallest(met, i -> i == 0, i -> i != 0));
    assertEquals(List.of(2), Moves.smallest(List.of(2, 0, 1), i -> false, i -> i == 2));
  }

  private static List<Integer> bestByTrial(List<Integer> met, int pins) {
    int best = 0;
    for (int kept = 0; kept < 1 << met.size(); kept++) {
      if (rises(met, kept) && isBetter(kept, best, pins)) {
        best = kept;
      }
    }
    int stays = best;
    return IntStream.range(0, met.size()).filter(i -> (stays >> i & 1) == 0).boxed().toList();
  }

  private static boolean rises(List<Integer> met, int kept) {
    List<Integer> left = met.stream().filter(i -> (kept >> i & 1) == 1).toList();
    return left.equals(left.stream().sorted().toList());
  }

  private static boolean isBetter(int a, int b, int pins) {
    int pinned = Integer.bitCount(a & pins) - Integer.bitCount(b & pins);
    int all = Integer.bitCount(a) - Integer.bitCount(b);
    int firstDifference = Integer.lowestOneBit(a ^ b);
    return pinned != 0 ? pinned > 0 : all != 0 ? all > 0 : (a & firstDifference) != 0;
  }

  private static List<Integer> shuffled(int size, int seed) {
    List<Integer> order = new ArrayList<>(IntStream.range(0, size).boxed().toList());
    Collections.shuffle(order, new Random(seed));
    return order;
  }
}
