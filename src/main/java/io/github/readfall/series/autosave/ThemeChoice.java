package io.github.readfall.series.autosave;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The window's theme, light or dark. */
public enum ThemeChoice {
  LIGHT,
  DARK,
  AS_SYSTEM;

  /** The word in the file. */
  String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static Optional<ThemeChoice> of(String word) {
    return Arrays.stream(values()).filter(choice -> choice.word().equals(word)).findFirst();
  }
}
