package io.github.readfall.window.model;

import io.github.readfall.job.polyglot.FittedEdition;
import io.github.readfall.series.Episode;

/**
 * An episode in another language, in the outlines of its strip.
 *
 * @param episode as it was written
 * @param fitted what it says, and how that goes in
 */
public record EditionSnapshot(Episode episode, FittedEdition fitted) {

  /** Its language as a BCP 47 tag. */
  public String language() {
    return fitted.edition().language();
  }
}
