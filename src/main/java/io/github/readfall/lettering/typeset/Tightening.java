package io.github.readfall.lettering.typeset;

/**
 * How much tighter than usual a balloon is lettered.
 *
 * @param size its size over the usual; positive, 1 at most
 * @param leading its leading over that of its size; positive, 1 at most
 * @param trackingEm letterspacing beside the voice's own, in em; 0 at most. Scripts whose letters
 *     join never have any
 */
public record Tightening(double size, double leading, double trackingEm) {

  private static final double SLACK = 1e-6;

  /** No tightening. */
  public static final Tightening NONE = new Tightening(1, 1, 0);

  public Tightening {
    if (!(size > 0 && size <= 1 && leading > 0 && leading <= 1 && trackingEm <= 0)) {
      throw new IllegalArgumentException("that is not tighter");
    }
  }

  /**
   * The tightening in hundredths, as it is shown: rounded to the tighter side, which fits as well.
   */
  public Tightening inHundredths() {
    return new Tightening(down(size), down(leading), down(trackingEm));
  }

  /** The value rounded down; the slack keeps a whole hundredth from losing another. */
  private static double down(double value) {
    return Math.floor(value * 100 + SLACK) / 100;
  }
}
