package io.github.readfall.draw;

/** What can be seen of a strip, each by itself. */
public enum Layer {
  /** Pale boxes where pictures will be. */
  PANELS,
  /** The borders of panels, and their numbers. */
  PANEL_FRAMES,
  /** What nothing may cover. */
  KEEP_CLEAR,
  /** The way of the eye from balloon to balloon, numbered. */
  PATH,
  /** Balloons, captions and effects. */
  LETTERING,
  /** The strip's safe margin. */
  MARGINS,
  /** What stands too near, with the distance. */
  GAPS,
  /** Text that has no room, and what leaves the strip. */
  OVERFLOW,
  /** Ends of canvas pages and of slices. */
  CUTS,
  /** Where tails end, and the mouths they should point at. */
  TAILS,
  /** A line round everything that was found. */
  FINDINGS
}
