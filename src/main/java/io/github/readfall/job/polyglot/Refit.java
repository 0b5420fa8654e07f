package io.github.readfall.job.polyglot;

import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.Tightening;

/**
 * A cue set into an outline that was made for other words, no tighter than needed.
 *
 * @param balloon as lettered; at its tightest if it does not fit even so
 * @param goesIn true if it fits
 * @param growBy factor by which the outline's width and height would have to grow for the cue to
 *     fit as usual; 1 if it does
 * @param lettersTooMany number of letters too many at its tightest; 0 if it fits
 */
public record Refit(SetBalloon balloon, boolean goesIn, double growBy, int lettersTooMany) {

  /** The tightness of its lettering. */
  public Tightening tightening() {
    return balloon.wanted().tightening();
  }

  /** Returns true if it is lettered as usual. */
  public boolean isAsUsual() {
    return tightening().equals(Tightening.NONE);
  }
}
