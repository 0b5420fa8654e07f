package io.github.readfall.script.assist;

/** What a writer may be about to write at a place of the script. */
public enum SlotKind {
  /** The beginning of a line before the first scene and panel. */
  TOP,
  /** The beginning of a line in a panel. */
  LINE,
  /** The beginning of a line between a scene's heading and its first panel. */
  SCENE,
  /** A manner, in the brackets behind a speaker. */
  MANNER,
  /** A voice, in the brackets behind a name of the cast. */
  VOICE,
  /** A shot size or another hint behind PANEL. */
  HINT,
  /** Prose. */
  NONE
}
