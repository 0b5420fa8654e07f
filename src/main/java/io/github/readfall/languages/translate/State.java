package io.github.readfall.languages.translate;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The state of a translated cue: the states of a segment in XLIFF 2.1, section 4.7.2.13. */
public enum State {
  /** Nothing done, or a draft. */
  INITIAL,
  /** Translated. */
  TRANSLATED,
  /** Reviewed by somebody else. */
  REVIEWED,
  /** Done. */
  FINAL;

  /** The word in files. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The state with this word. */
  public static Optional<State> of(String word) {
    return Arrays.stream(values()).filter(state -> state.word().equals(word)).findFirst();
  }
}
