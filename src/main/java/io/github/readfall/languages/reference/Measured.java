package io.github.readfall.languages.reference;

import io.github.readfall.languages.translate.Budget;
import java.util.List;

/**
 * The number of characters (code points) of a language that fit one balloon, over stretches of the
 * reference text.
 *
 * @param least of any stretch; may be 0
 * @param p10 the tenth percentile: of nine stretches in ten at least so many fit
 * @param median of all
 * @param p90 the ninetieth percentile
 * @param most of any stretch
 * @param samples number of stretches
 */
public record Measured(int least, int p10, int median, int p90, int most, int samples) {

  /** The measure of some counts, by nearest rank. */
  static Measured of(List<Integer> characters) {
    List<Integer> sorted = characters.stream().sorted().toList();
    int n = sorted.size();
    return new Measured(
        sorted.get(0),
        sorted.get(Percentiles.rank(n, 10)),
        sorted.get(Percentiles.rank(n, 50)),
        sorted.get(Percentiles.rank(n, 90)),
        sorted.get(n - 1),
        n);
  }

  /**
   * The budget for a translator: comfortable is the tenth percentile, most is the largest. In a
   * balloon too small for any letter both are 1.
   */
  public Budget budget() {
    return new Budget(Math.max(1, p10), Math.max(1, most));
  }
}
