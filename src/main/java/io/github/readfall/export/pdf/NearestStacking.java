package io.github.readfall.export.pdf;

/** Puts boxes below each other without overlap, each as near as possible to its wanted place. */
final class NearestStacking {

  private NearestStacking() {}

  /**
   * The tops of the boxes.
   *
   * @param wanted tops, in order
   * @param heights of the boxes; with the gaps no more than there is room for
   * @param apart gap between two
   * @param top of the room
   * @param bottom of the room
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
