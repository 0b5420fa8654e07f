package io.github.readfall.lettering.typeset;

import io.github.readfall.base.geom.Box;

/**
 * How a balloon's text goes into the outline that was asked for.
 *
 * @param scale the largest size at which its lines go in with their margin, over the size they are
 *     set at: 1 where they just do
 * @param clearPx least distance from a line's box to the outline's inner area; negative where the
 *     text leaves it
 * @param lettersTooMany how many letters would have to go from its end; 0 where it goes in with its
 *     margin
 * @param ownSize width and height of the outline it would have by itself, at the origin
 */
public record GivenFit(double scale, double clearPx, int lettersTooMany, Box ownSize) {

  /** Whether the text goes in with its margin. */
  public boolean fits() {
    return lettersTooMany == 0;
  }

  /** By how much the outline's width and height must grow; 1 where the text goes in. */
  public double growBy() {
    return fits() ? 1 : Math.max(1, 1 / scale);
  }
}
