package io.github.readfall.base.finding;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;

/** Says in words which way a box moves, and how far compared with its size. */
final class Direction {

  private Direction() {}

  /** For example {@code up by 50 % of its height and to the left by 4 % of its width}. */
  static String of(Box from, XY to) {
    String across =
        said(from.x() - to.x(), from.width(), "to the left", "to the right", "its width");
    String down = said(from.y() - to.y(), from.height(), "up", "down", "its height");
    String both = down + (down.isEmpty() || across.isEmpty() ? "" : " and ") + across;
    return both.isEmpty() ? "a little" : both;
  }

  private static String said(double backPx, double sizePx, String back, String forth, String size) {
    long percent = Math.round(100 * Math.abs(backPx) / sizePx);
    return percent == 0 ? "" : (backPx > 0 ? back : forth) + " by " + percent + " % of " + size;
  }
}
