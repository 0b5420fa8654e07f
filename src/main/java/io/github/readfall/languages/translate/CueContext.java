package io.github.readfall.languages.translate;

import java.util.Optional;

/**
 * The context of a cue for a translator.
 *
 * @param budget of its balloon, if that is known
 * @param balloon its balloon, if it is set
 * @param picture of the balloon, relative to the file; empty for none
 */
public record CueContext(
    Optional<Budget> budget, Optional<BalloonFacts> balloon, Optional<String> picture) {

  /** Of a cue that nothing is known about. */
  public static final CueContext NONE =
      new CueContext(Optional.empty(), Optional.empty(), Optional.empty());
}
