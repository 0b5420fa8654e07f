package io.github.readfall.type.balloon;

/**
 * The way round a superellipse, for spacing points by the length between them. The way begins at
 * the right end and goes by its lower one.
 */
final class ArcLength {

  private static final int SAMPLES = 180;
  private static final double STEP = 2 * Math.PI / SAMPLES;

  private final double[] wayPx = new double[SAMPLES + 1];

  ArcLength(Superellipse round) {
    for (int i = 1; i <= SAMPLES; i++) {
      wayPx[i] = wayPx[i - 1] + round.at(i * STEP).distanceTo(round.at((i - 1) * STEP));
    }
  }

  /** All of the way. */
  double lengthPx() {
    return wayPx[SAMPLES];
  }

  /**
   * The angle at a share of the way, to about a thousandth of the whole.
   *
   * @param share any number: one way round is 1
   */
  double angle(double share) {
    double turns = Math.floor(share);
    double target = (share - turns) * lengthPx();
    int low = 0;
    int high = SAMPLES;
    while (high - low > 1) {
      int middle = (low + high) / 2;
      boolean past = wayPx[middle] > target;
      high = past ? middle : high;
      low = past ? low : middle;
    }
    double rest = (target - wayPx[low]) / (wayPx[high] - wayPx[low]);
    return (low + rest) * STEP + turns * 2 * Math.PI;
  }
}
