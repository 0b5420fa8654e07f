package io.github.readfall.cli;

import java.util.Locale;

/** The form of letters in an SVG. */
enum TextForm {
  /** As outlines: they look the same everywhere. */
  OUTLINES,
  /** As text that can be edited. */
  LIVE;

  /** The word on a command line. */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }
}
