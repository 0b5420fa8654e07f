package io.github.readfall;

import java.util.List;
import java.util.stream.IntStream;

/**
 * How much of a long test to run: a short form in every build, all of it under {@code -Pendurance}.
 */
public final class Endurance {

  private Endurance() {}

  /** True under {@code -Pendurance}. */
  public static boolean isLong() {
    return Boolean.getBoolean("readfall.endurance");
  }

  /** The number of rounds of a random walk or a loop of kills. */
  public static int rounds(int inEveryBuild, int underEndurance) {
    return isLong() ? underEndurance : inEveryBuild;
  }

  /**
   * All cases under {@code -Pendurance}, else every n-th, beginning with the first: of [a b c d e f
   * g] every third is [a d g].
   */
  public static <T> List<T> every(int n, List<T> cases) {
    return isLong()
        ? cases
        : IntStream.range(0, cases.size()).filter(i -> i % n == 0).mapToObj(cases::get).toList();
  }
}
