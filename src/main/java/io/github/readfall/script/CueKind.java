package io.github.readfall.script;

/** What a cue is, whoever it belongs to. */
public enum CueKind {
  DIALOGUE,
  CAPTION,
  EFFECT
}
