package io.github.readfall.export.raster;

import java.util.Locale;

/** The layers of lettering, from back to front; and all of it in one. */
enum LetteringLayer {
  BALLOONS,
  TAILS,
  TEXT,
  LETTERING;

  /** The word in the names of files and groups. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  String title() {
    return name().charAt(0) + word().substring(1);
  }
}
