package io.github.readfall.window.canvas;

/** Where to scroll so that something is comfortably in view. */
final class ScrollTarget {

  /** How much of the view is kept free round what is looked at. House default, no source. */
  private static final double COMFORT = 0.12;

  private ScrollTarget() {}

  /**
   * The start of the view from which something is seen, the present one if that will do.
   *
   * @param viewStart start of what is in view
   * @param viewLength how much is in view; positive
   * @param start of what is to be seen, on the same scale
   * @param end of it
   * @param most the last start there is
   */
  static double start(double viewStart, double viewLength, double start, double end, double most) {
    double air = COMFORT * viewLength;
    boolean seen = start >= viewStart + air && end <= viewStart + viewLength - air;
    boolean fits = end - start <= viewLength - 2 * air;
    double wanted = fits ? (start + end - viewLength) / 2 : start - air;
    return seen ? viewStart : Math.max(0, Math.min(most, wanted));
  }
}
