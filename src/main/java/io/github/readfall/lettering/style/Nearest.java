package io.github.readfall.lettering.style;

import io.github.readfall.base.finding.Spelling;
import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** The known word that a mistyped one was most likely meant to be. */
final class Nearest {

  private static final int LONGEST = 60; // a longer word is no slip of the finger

  private Nearest() {}

  /**
   * The known word with the fewest letters to change, if a third of them or fewer need changing.
   *
   * <p>Worked example: {@code widht} is one slip from {@code width}, whose five letters allow for
   * one.
   */
  static Optional<String> to(String typed, Collection<String> known) {
    if (typed.length() > LONGEST) {
      return Optional.empty();
    }
    return known.stream()
        .filter(word -> Spelling.between(typed, word) <= Math.max(1, word.length() / 3))
        .min(Comparator.comparingInt(word -> Spelling.between(typed, word)));
  }
}
