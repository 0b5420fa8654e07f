package io.github.readfall.window.model;

import io.github.readfall.plan.Screens;
import java.util.List;

/**
 * The speed at which a reader scrolls down a strip: each screen stays as long as reading its words
 * takes, and long enough to look at the pictures.
 *
 * @param screens of the strip
 */
public record ReadingPace(Screens screens) {

  /** The least time on a screen, in seconds. House default, no source. */
  static final double LOOK_S = 1.5;

  /** The speed while a height is in the middle of the phone, in strip pixels a second. */
  public double pxPerSecond(double middlePx) {
    List<Screens.Screen> all = screens.screens();
    if (all.isEmpty()) {
      return screens.screenPx() / LOOK_S;
    }
    int index = Math.min(all.size() - 1, Screens.index(middlePx, screens.screenPx()));
    return screens.screenPx() / Math.max(LOOK_S, all.get(index).seconds());
  }
}
