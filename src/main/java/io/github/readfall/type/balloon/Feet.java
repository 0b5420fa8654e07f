package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.XY;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Points round a superellipse at uneven distances, for outlines that touch it there and bulge out
 * between: as a hand would space them, the same for the same seed.
 *
 * @param round the curve
 * @param way round it
 * @param shares of the way at which the points are, rising; the last is a whole way past the first
 */
record Feet(Superellipse round, ArcLength way, List<Double> shares) {

  Feet {
    shares = List.copyOf(shares);
  }

  /**
   * So many points.
   *
   * @param spread greatest part a distance is longer or shorter than the mean; under 1
   */
  static Feet of(
      Superellipse round, ArcLength way, int count, double spread, SplittableRandom random) {
    double[] ways = new double[count + 1];
    for (int i = 1; i <= count; i++) {
      ways[i] = ways[i - 1] + random.nextDouble(1 - spread, 1 + spread);
    }
    double start = random.nextDouble();
    List<Double> shares = Arrays.stream(ways).mapToObj(from -> start + from / ways[count]).toList();
    return new Feet(round, way, shares);
  }

  int count() {
    return shares.size() - 1;
  }

  /** The angle of a point, 0 to {@code count()}. */
  double angle(int foot) {
    return way.angle(shares.get(foot));
  }

  /** The angle a share of the way from a point to the next. */
  double angle(int foot, double share) {
    return way.angle(shares.get(foot) + (shares.get(foot + 1) - shares.get(foot)) * share);
  }

  XY at(int foot) {
    return round.at(angle(foot));
  }

  /** The straight distance from a point to the next. */
  double gapPx(int foot) {
    return at(foot).distanceTo(at(foot + 1));
  }
}
