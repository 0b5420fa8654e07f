package io.github.readfall.script;

/** The kind of a cue, whatever its speaker. */
public enum CueKind {
  DIALOGUE,
  CAPTION,
  EFFECT
}
