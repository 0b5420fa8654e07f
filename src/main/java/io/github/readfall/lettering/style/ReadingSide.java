package io.github.readfall.lettering.style;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The side from which a strip is read, panels and balloons alike. */
public enum ReadingSide {
  /** From the left, as in English. */
  LTR,
  /** From the right, as in Arabic. */
  RTL;

  /** The word in files: {@code ltr}, {@code rtl}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The side of that word, if there is one. */
  public static Optional<ReadingSide> of(String word) {
    return Arrays.stream(values()).filter(side -> side.word().equals(word)).findFirst();
  }
}
