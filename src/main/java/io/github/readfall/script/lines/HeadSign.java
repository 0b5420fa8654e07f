package io.github.readfall.script.lines;

/** The sign between the head of a cue and its words. */
public enum HeadSign {
  COLON,
  /** A hyphen or dash between spaces. */
  DASH,
  /** No sign: the name is alone on its line. */
  NONE
}
