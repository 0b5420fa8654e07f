package io.github.readfall.window.canvas;

/**
 * Where on a strip the screen of a phone is. Lengths are strip pixels.
 *
 * @param topPx upper edge of the screen
 * @param screenPx height of the screen; positive
 * @param stripPx height of the strip
 */
record PhonePosition(double topPx, double screenPx, double stripPx) {

  /** No further than the strip goes. */
  PhonePosition {
    topPx = Math.max(0, Math.min(topPx, Math.max(0, stripPx - screenPx)));
  }

  PhonePosition at(double otherTopPx) {
    return new PhonePosition(otherTopPx, screenPx, stripPx);
  }

  boolean isAtEnd() {
    return topPx >= stripPx - screenPx;
  }

  /** After reading on for some time. */
  PhonePosition after(double seconds, ScrollPace pace) {
    return at(topPx + seconds * Math.max(0, pace.pxPerSecond(topPx + screenPx / 2)));
  }

  /** Which screenful the middle of the screen is in, from 1. */
  int screen() {
    int at = 1 + (int) Math.floor((topPx + screenPx / 2) / screenPx);
    return isAtEnd() ? screens() : Math.min(at, screens());
  }

  /** How many screenfuls the strip has; at least 1. */
  int screens() {
    return (int) Math.max(1, Math.ceil(stripPx / screenPx - 1e-9));
  }
}
