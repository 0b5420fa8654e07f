package io.github.readfall.window.model;

import io.github.readfall.job.polyglot.FittedEdition;
import io.github.readfall.series.Episode;

/**
 * An episode in another language, set into the outlines of its strip.
 *
 * @param episode the original
 * @param fitted its translation, and how that fits
 */
public record EditionSnapshot(Episode episode, FittedEdition fitted) {

  /** The language as a BCP 47 tag. */
  public String language() {
    return fitted.edition().language();
  }
}
