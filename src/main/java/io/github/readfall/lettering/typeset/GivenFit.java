package io.github.readfall.lettering.typeset;

import io.github.readfall.base.geom.Box;

/**
 * The fit of a balloon's text in the requested outline.
 *
 * @param scale the largest size at which its lines fit with their margin, over the size they are
 *     set at: 1 if they just do
 * @param clearPx least distance from a line's box to the outline's inner area; negative if the text
 *     leaves it
 * @param lettersTooMany number of letters too many at its end; 0 if it fits with its margin
 * @param ownSize width and height of the outline it would have by itself, at the origin
 */
public record GivenFit(double scale, double clearPx, int lettersTooMany, Box ownSize) {

  /** Returns true if the text fits with its margin. */
  public boolean fits() {
    return lettersTooMany == 0;
  }

  /** The factor by which the outline's width and height must grow; 1 if the text fits. */
  public double growBy() {
    return fits() ? 1 : Math.max(1, 1 / scale);
  }
}
