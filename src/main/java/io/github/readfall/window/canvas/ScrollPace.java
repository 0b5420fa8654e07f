package io.github.readfall.window.canvas;

/** How fast a reader goes down a strip. */
@FunctionalInterface
public interface ScrollPace {

  /**
   * The speed at a place.
   *
   * @param atPx in strip pixels from the top, at the middle of the screen
   * @return strip pixels a second; positive
   */
  double pxPerSecond(double atPx);
}
