package io.github.readfall.window.canvas;

/** Computes the scale at which a whole strip is kept, so that any part can be shown at once. */
final class ThumbnailScale {

  /** House defaults, no source: an eighth of the strip's width, in 20 MB at most. */
  private static final double LARGEST = 0.125;

  private static final double MOST_PX = 5_000_000;

  private ThumbnailScale() {}

  static double scale(StripScene scene) {
    double areaPx2 = Math.max(1, scene.widthPx() * scene.heightPx());
    return Math.min(LARGEST, Math.sqrt(MOST_PX / areaPx2));
  }
}
