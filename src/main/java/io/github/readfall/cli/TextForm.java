package io.github.readfall.cli;

import java.util.Locale;

/** How letters are written into an SVG. */
enum TextForm {
  /** As outlines: they look the same everywhere. */
  OUTLINES,
  /** As text that can be edited. */
  LIVE;

  /** As it is typed. */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }
}
