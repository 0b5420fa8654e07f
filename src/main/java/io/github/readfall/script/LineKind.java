package io.github.readfall.script;

/** The kind of a line of the script. */
public enum LineKind {
  BLANK,
  /** Begins with {@code //}: for the writer's eyes only. */
  NOTE,
  HEADER,
  SCENE,
  PANEL,
  /** The first line of a cue. */
  CUE,
  /** A cue's text that runs on. */
  CUE_TEXT,
  /** A description of the picture, not lettered. */
  DESCRIPTION,
  /** Neither header nor note, and before the first panel or scene. */
  STRAY
}
