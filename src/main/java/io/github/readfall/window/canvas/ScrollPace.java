package io.github.readfall.window.canvas;

/** The speed at which a reader scrolls down a strip. */
@FunctionalInterface
public interface ScrollPace {

  /**
   * The speed at a position.
   *
   * @param atPx the middle of the screen, in strip pixels from the top
   * @return strip pixels a second; positive
   */
  double pxPerSecond(double atPx);
}
