package io.github.readfall.draw;

/** The layers in which a strip can be seen. */
public enum Layer {
  /** Pale boxes in place of pictures. */
  PANELS,
  /** The borders of panels, and their numbers. */
  PANEL_FRAMES,
  /** Areas that nothing may cover. */
  KEEP_CLEAR,
  /** The reading path from balloon to balloon, numbered. */
  PATH,
  /** Balloons, captions and effects. */
  LETTERING,
  /** The strip's safe margin. */
  MARGINS,
  /** Gaps that are too small, with the distance. */
  GAPS,
  /** Text without room, and balloons that leave the strip. */
  OVERFLOW,
  /** Ends of canvas pages and of slices. */
  CUTS,
  /** Tips of tails, and the mouths they should point at. */
  TAILS,
  /** A line round every finding. */
  FINDINGS
}
