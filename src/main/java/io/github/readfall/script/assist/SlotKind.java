package io.github.readfall.script.assist;

/** The kinds of what a writer may be about to write. */
public enum SlotKind {
  /** The beginning of a line before the first scene and panel. */
  TOP,
  /** The beginning of a line in a panel. */
  LINE,
  /** The beginning of a line between a scene's heading and its first panel. */
  SCENE,
  /** A manner, in the brackets after a speaker. */
  MANNER,
  /** A voice, in the brackets after a name of the cast. */
  VOICE,
  /** A shot size or another hint after PANEL. */
  HINT,
  /** Prose. */
  NONE
}
