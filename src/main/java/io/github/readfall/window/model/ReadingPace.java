package io.github.readfall.window.model;

import io.github.readfall.plan.Screens;
import java.util.List;

/**
 * How fast a reader scrolls down a strip: each screen stays as long as its words are read, and long
 * enough for a look at the pictures.
 *
 * @param screens of the strip
 */
public record ReadingPace(Screens screens) {

  /** A screen without words is looked at for this long. House default, no source. */
  static final double LOOK_S = 1.5;

  /**
   * How fast the strip moves while this height is in the middle of the phone, in strip pixels a
   * second.
   */
  public double pxPerSecond(double middlePx) {
    List<Screens.Screen> all = screens.screens();
    if (all.isEmpty()) {
      return screens.screenPx() / LOOK_S;
    }
    int index = Math.min(all.size() - 1, Screens.index(middlePx, screens.screenPx()));
    return screens.screenPx() / Math.max(LOOK_S, all.get(index).seconds());
  }
}
