package io.github.readfall.export.pdf;

/** Puts things below each other, none on another and each near to where it should be. */
final class NearestStacking {

  private NearestStacking() {}

  /**
   * Where their tops go.
   *
   * @param wanted tops, in order
   * @param heights of the things; with what is between two no more than there is room for
   * @param apart between two
   * @param top where the room begins
   * @param bottom where it ends
   */
  static double[] tops(double[] wanted, double[] heights, double apart, double top, double bottom) {
    double[] tops = new double[wanted.length];
    double free = top;
    for (int i = 0; i < tops.length; i++) {
      tops[i] = Math.max(free, wanted[i]);
      free = tops[i] + heights[i] + apart;
    }
    double end = bottom;
    for (int i = tops.length - 1; i >= 0; i--) {
      tops[i] = Math.min(tops[i], end - heights[i]);
      end = tops[i] - apart;
    }
    return tops;
  }
}
