package io.github.readfall.strip.gesture;

import io.github.readfall.strip.edits.StripItem;

/** Where something is taken hold of. */
public sealed interface Grip {

  /** Something as a whole: it is moved. */
  record Body(StripItem item) implements Grip {}

  /**
   * A side or a corner of its box: it is made larger or smaller.
   *
   * @param dx -1 for the left side, 1 for the right one, 0 for neither
   * @param dy -1 for the upper side, 1 for the lower one, 0 for neither
   */
  record Edge(StripItem item, int dx, int dy) implements Grip {}

  /**
   * The gutter above a panel: it is opened or closed.
   *
   * @param panel its place in the script, from 1
   */
  record Gutter(int panel) implements Grip {}

  /** Nothing: what lies in the box that is drawn is chosen. */
  record Ground() implements Grip {}
}
