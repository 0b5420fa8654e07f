package io.github.readfall.strip.gesture;

import io.github.readfall.strip.edits.StripItem;

/** The part of an element that the pointer grips. */
public sealed interface Grip {

  /** The whole element, to move it. */
  record Body(StripItem item) implements Grip {}

  /**
   * A side or a corner of its box, to resize it.
   *
   * @param dx -1 for the left side, 1 for the right one, 0 for neither
   * @param dy -1 for the upper side, 1 for the lower one, 0 for neither
   */
  record Edge(StripItem item, int dx, int dy) implements Grip {}

  /**
   * The gutter above a panel, to open or close it.
   *
   * @param panel its place in the script, from 1
   */
  record Gutter(int panel) implements Grip {}

  /** The background, to draw a box round balloons and select them. */
  record Background() implements Grip {}
}
