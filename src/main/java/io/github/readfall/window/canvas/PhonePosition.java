package io.github.readfall.window.canvas;

/**
 * The position of a phone's screen on a strip. Lengths are strip pixels.
 *
 * @param topPx upper edge of the screen
 * @param screenPx height of the screen; positive
 * @param stripPx height of the strip
 */
record PhonePosition(double topPx, double screenPx, double stripPx) {

  /** Keeps the screen within the strip. */
  PhonePosition {
    topPx = Math.max(0, Math.min(topPx, Math.max(0, stripPx - screenPx)));
  }

  PhonePosition at(double otherTopPx) {
    return new PhonePosition(otherTopPx, screenPx, stripPx);
  }

  boolean isAtEnd() {
    return topPx >= stripPx - screenPx;
  }

  /** The position after some time of reading. */
  PhonePosition after(double seconds, ScrollPace pace) {
    return at(topPx + seconds * Math.max(0, pace.pxPerSecond(topPx + screenPx / 2)));
  }

  /** The number of the screenful that the middle of the screen is in, from 1. */
  int screen() {
    int at = 1 + (int) Math.floor((topPx + screenPx / 2) / screenPx);
    return isAtEnd() ? screens() : Math.min(at, screens());
  }

  /** The number of screenfuls of the strip; at least 1. */
  int screens() {
    return (int) Math.max(1, Math.ceil(stripPx / screenPx - 1e-9));
  }
}
