package io.github.readfall.lettering.style;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The kinds of file a slice is delivered in. */
public enum SliceFormat {
  PNG("png"),
  JPEG("jpg");

  private final String ending;

  SliceFormat(String ending) {
    this.ending = ending;
  }

  /** The ending of its files' names, without the dot. */
  public String ending() {
    return ending;
  }

  public static Optional<SliceFormat> of(String word) {
    return Arrays.stream(values())
        .filter(format -> format.name().toLowerCase(Locale.ROOT).equals(word))
        .findFirst();
  }
}
