package io.github.readfall.script.align;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.finding.Spelling;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SequenceAlignmentTest {

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void noPairingInOrderHasAGreaterSum(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int round = 0; round < 300; round++) {
      double[][] scores = new double[random.nextInt(8)][random.nextInt(1, 8)];
      for (double[] row : scores) {
        for (int j = 0; j < row.length; j++) {
          row[j] = random.nextInt(5) / 4.0;
        }
      }
      int nows = scores.length == 0 ? 3 : scores[0].length;
      int[] pairs =
          SequenceAlignment.pairs(
              scores.length, nows, (i, j) -> scores[i][j] == 1, (i, j) -> scores[i][j]);
      assertEquals(greatest(scores, 0, 0), sum(scores, pairs), 1e-9);
    }
  }

  /** Every pairing there is. */
  private static double greatest(double[][] scores, int i, int j) {
    if (i == scores.length || j == scores[0].length) {
      return 0;
    }
    double best = Math.max(greatest(scores, i + 1, j), greatest(scores, i, j + 1));
    return Math.max(best, scores[i][j] + greatest(scores, i + 1, j + 1));
  }

  private static double sum(double[][] scores, int[] pairs) {
    double sum = 0;
    int last = -1;
    for (int i = 0; i < pairs.length; i++) {
      if (pairs[i] != SequenceAlignment.NONE) {
        assertTrue(pairs[i] > last, "the pairs cross");
        assertTrue(scores[i][pairs[i]] > 0, "a pair that may not be");
        last = pairs[i];
        sum += scores[i][last];
      }
    }
    return sum;
  }

  @Test
  void whatIsTheSameIsPairedFromTheTop() {
    assertArrayEquals(
        new int[] {0, 1, -1}, SequenceAlignment.pairs(3, 2, (i, j) -> true, (i, j) -> 1));
    assertArrayEquals(new int[] {0, 1}, SequenceAlignment.pairs(2, 5, (i, j) -> true, (i, j) -> 1));
    assertArrayEquals(new int[] {0, 1}, SequenceAlignment.pairs(2, 5, (i, j) -> 1));
  }

  @ParameterizedTest
  @CsvSource({
    "wheel, wheat, 0.6",
    "wheel, wheel, 1",
    "'', '', 1",
    "'', abc, 0",
    "abc, xyz, 0",
    "the tide turns, the tide turned, 0.8667",
    "kitten, sitting, 0.5714"
  })
  void likenessIsTheShareOfLettersThatStay(String a, String b, double expected) {
    assertEquals(expected, Spelling.likeness(a, b, 0), 1e-4);
    assertEquals(expected, Spelling.likeness(b, a, 0), 1e-4);
  }
}
