package io.github.readfall.series.autosave;

import java.util.Comparator;
import java.util.List;

/**
 * A window's place, or a screen's, in the units of the desktop.
 *
 * @param x of the left edge; below 0 on a screen left of the first
 * @param y of the upper edge
 * @param width more than 0
 * @param height more than 0
 */
public record WindowBox(int x, int y, int width, int height) {

  /**
   * Width of a window's upper edge that must be in sight to take hold of it. House default, no
   * source.
   */
  private static final int HOLD_WIDTH = 100;

  private static final int HOLD_HEIGHT = 24;

  /** Refuses a box without a size. */
  public WindowBox {
    if (width < 1 || height < 1) {
      throw new IllegalArgumentException("a window has a size: " + width + " by " + height);
    }
  }

  /**
   * The same window where it can be seen and taken hold of: as it is, if enough of its upper edge
   * is on a screen; else in the middle of the screen that has most of it, or of the first. It is
   * never larger than its screen.
   *
   * @param screens the first is the main one; if there is none the window stays as it is
   */
  public WindowBox onScreen(List<WindowBox> screens) {
    if (screens.isEmpty()) {
      return this;
    }
    WindowBox screen =
        screens.stream().max(Comparator.comparingLong(this::shared)).orElse(screens.get(0));
    WindowBox home = shared(screen) > 0 ? screen : screens.get(0);
    WindowBox fitted =
        new WindowBox(x, y, Math.min(width, home.width), Math.min(height, home.height));
    return screens.stream().anyMatch(fitted::canBeHeldOn) ? fitted : fitted.inTheMiddleOf(home);
  }

  private WindowBox inTheMiddleOf(WindowBox screen) {
    return new WindowBox(
        screen.x + (screen.width - width) / 2,
        screen.y + (screen.height - height) / 2,
        width,
        height);
  }

  private boolean canBeHeldOn(WindowBox screen) {
    long across = overlap(x, width, screen.x, screen.width);
    boolean edgeInSight =
        y >= screen.y && y + (long) HOLD_HEIGHT <= screen.y + (long) screen.height;
    return edgeInSight && across >= Math.min(HOLD_WIDTH, width);
  }

  private long shared(WindowBox other) {
    return overlap(x, width, other.x, other.width) * overlap(y, height, other.y, other.height);
  }

  private static long overlap(long from, long length, long otherFrom, long otherLength) {
    return Math.max(
        0, Math.min(from + length, otherFrom + otherLength) - Math.max(from, otherFrom));
  }
}
