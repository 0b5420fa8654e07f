package io.github.readfall.lettering.style;

/**
 * The limits of a publisher: the strip is scaled to this width and cut into slices.
 *
 * @param widthPx width of a slice in pixels; positive
 * @param maxSliceHeightPx greatest height of a slice in pixels; positive
 * @param maxSliceBytes greatest size of a slice's file in bytes; positive
 * @param maxEpisodeHeightPx greatest height of an episode in slice pixels; positive
 * @param format of a slice's file
 * @param quality of a JPEG, from 1 to 100, before it is lowered for its size
 */
public record Delivery(
    int widthPx,
    int maxSliceHeightPx,
    long maxSliceBytes,
    int maxEpisodeHeightPx,
    SliceFormat format,
    int quality) {

  /** House defaults, no source: every publisher says its own. */
  public static final Delivery DEFAULT =
      new Delivery(900, 2000, 3_000_000, 60_000, SliceFormat.PNG, 95);

  public Delivery {
    if (widthPx <= 0 || maxSliceHeightPx <= 0 || maxSliceBytes <= 0 || maxEpisodeHeightPx <= 0) {
      throw new IllegalArgumentException("nothing can be delivered: a limit is not positive");
    }
    if (quality < 1 || quality > 100) {
      throw new IllegalArgumentException("no quality of a JPEG: " + quality);
    }
  }

  /** The same with slices that are no taller than this, in pixels; positive. */
  public Delivery withSlicesUpTo(int mostPx) {
    return new Delivery(
        widthPx,
        Math.min(mostPx, maxSliceHeightPx),
        maxSliceBytes,
        maxEpisodeHeightPx,
        format,
        quality);
  }
}
