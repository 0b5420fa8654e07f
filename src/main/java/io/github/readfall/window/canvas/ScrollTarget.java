package io.github.readfall.window.canvas;

/** Computes a scroll position that brings something comfortably into view. */
final class ScrollTarget {

  /** Share of the view that is kept free around it. House default, no source. */
  private static final double COMFORT = 0.12;

  private ScrollTarget() {}

  /**
   * The start of a view that shows something: the present start if that already does.
   *
   * @param viewStart present start of the view
   * @param viewLength length of the view; positive
   * @param start of what is to be shown, on the same scale
   * @param end of what is to be shown
   * @param most the last possible start of the view
   */
  static double start(double viewStart, double viewLength, double start, double end, double most) {
    double air = COMFORT * viewLength;
    boolean seen = start >= viewStart + air && end <= viewStart + viewLength - air;
    boolean fits = end - start <= viewLength - 2 * air;
    double wanted = fits ? (start + end - viewLength) / 2 : start - air;
    return seen ? viewStart : Math.max(0, Math.min(most, wanted));
  }
}
