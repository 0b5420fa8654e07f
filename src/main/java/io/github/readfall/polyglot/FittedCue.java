package io.github.readfall.polyglot;

import io.github.readfall.typeset.Tightening;

/**
 * How a cue of one edition goes into the outline that is there.
 *
 * @param refit how it is lettered
 * @param verdict what it needs
 * @param expected whether its words are a stand-in
 */
public record FittedCue(Refit refit, Verdict verdict, boolean expected) {

  /** Its id. */
  public String id() {
    return refit.balloon().cue().id();
  }

  /** How tight it is lettered. */
  public Tightening tightening() {
    return refit.tightening();
  }
}
