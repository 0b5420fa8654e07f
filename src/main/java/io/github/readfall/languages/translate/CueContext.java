package io.github.readfall.languages.translate;

import java.util.Optional;

/**
 * What a translator is told about a cue besides its words.
 *
 * @param budget how much goes into its balloon, where that is known
 * @param balloon its balloon, where it is set
 * @param picture where a picture of the balloon lies, as seen from the file; empty for none
 */
public record CueContext(
    Optional<Budget> budget, Optional<BalloonFacts> balloon, Optional<String> picture) {

  /** Of a cue that nothing is known about. */
  public static final CueContext NONE =
      new CueContext(Optional.empty(), Optional.empty(), Optional.empty());
}
