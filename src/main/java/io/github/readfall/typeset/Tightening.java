package io.github.readfall.typeset;

/**
 * How much tighter than usual a balloon is lettered.
 *
 * @param size its size over the usual; positive, 1 at most
 * @param leading its leading over that of its size; positive, 1 at most
 * @param trackingEm letterspacing beside the voice's own, in em; 0 at most. Scripts whose letters
 *     join have none whatever is asked
 */
public record Tightening(double size, double leading, double trackingEm) {

  /** As usual. */
  public static final Tightening NONE = new Tightening(1, 1, 0);

  public Tightening {
    if (!(size > 0 && size <= 1 && leading > 0 && leading <= 1 && trackingEm <= 0)) {
      throw new IllegalArgumentException("that is not tighter");
    }
  }
}
