package io.github.readfall.job.polyglot;

import io.github.readfall.base.geom.Box;
import io.github.readfall.script.Cue;

/**
 * The smallest balloon that a cue fits in each of several languages, all at reading size.
 *
 * @param cue of the original script
 * @param size its width and height as drawn, in strip pixels, at the origin
 * @param ownSize of the balloon that the original needs by itself
 * @param decidedBy the language that needs this size, as a BCP 47 tag
 * @param expected true if that language's words are a stand-in
 */
public record SharedBalloon(Cue cue, Box size, Box ownSize, String decidedBy, boolean expected) {

  /** Its cost: its bounding area over that of the original's own, less 1. */
  public double cost() {
    return size.width() * size.height() / (ownSize.width() * ownSize.height()) - 1;
  }
}
