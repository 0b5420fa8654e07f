package io.github.readfall.job.polyglot;

import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.Tightening;

/**
 * A cue set into an outline that was made for other words, no tighter than it has to be.
 *
 * @param balloon as it is lettered; at its tightest where it does not go in even so
 * @param goesIn whether it does
 * @param growBy by how much the outline's width and height would have to grow for the cue to go in
 *     as usual; 1 where it does
 * @param lettersTooMany how many letters would have to go for the rest to go in at its tightest; 0
 *     where it goes in
 */
public record Refit(SetBalloon balloon, boolean goesIn, double growBy, int lettersTooMany) {

  /** How tight it is lettered. */
  public Tightening tightening() {
    return balloon.wanted().tightening();
  }

  /** Whether it is lettered as usual. */
  public boolean isAsUsual() {
    return tightening().equals(Tightening.NONE);
  }
}
