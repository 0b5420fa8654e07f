package io.github.readfall.lettering.style;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The style of the line round a balloon. */
public enum LineStyle {
  SOLID,
  /** Whispers (common practice). */
  DASHED;

  /** The word in files: {@code solid}, {@code dashed}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The line style of that word, if there is one. */
  public static Optional<LineStyle> of(String word) {
    return Arrays.stream(values()).filter(style -> style.word().equals(word)).findFirst();
  }
}
