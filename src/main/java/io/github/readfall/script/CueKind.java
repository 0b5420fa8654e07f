package io.github.readfall.script;

/** The kind of a cue, whoever speaks it. */
public enum CueKind {
  DIALOGUE,
  CAPTION,
  EFFECT
}
