package io.github.readfall.script;

/** The part of the subject that a panel shows, in the trade's words, farthest first. */
public enum Shot {
  EXTREME_LONG,
  LONG,
  FULL,
  MEDIUM_LONG,
  MEDIUM,
  MEDIUM_CLOSE_UP,
  CLOSE_UP,
  EXTREME_CLOSE_UP
}
