package io.github.readfall.lettering.style;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The one form in which a series letters its dashes. */
public enum Dashes {
  /** Each as the script has it. */
  AS_WRITTEN,
  /** Two hyphens: the tradition of comics, for broken-off speech. */
  DOUBLE_HYPHEN,
  /** The em dash. */
  EM;

  /** The word in series.toml, e.g. {@code double-hyphen}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static List<String> words() {
    return Arrays.stream(values()).map(Dashes::word).toList();
  }

  static Optional<Dashes> of(String word) {
    return Arrays.stream(values()).filter(dashes -> dashes.word().equals(word)).findFirst();
  }
}
