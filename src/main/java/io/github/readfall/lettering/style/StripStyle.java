package io.github.readfall.lettering.style;

/**
 * The canvas that every episode of a series is drawn on.
 *
 * @param widthPx width of the strip in pixels; positive
 * @param pageHeightPx height of one canvas page in pixels; positive
 * @param dpi pixels to the inch that image files are marked with; positive
 * @param safeMarginPx the strip's left and right edges that balloons keep out of, in pixels; not
 *     negative, both together narrower than the strip
 * @param reads the side from which the strip is read
 */
public record StripStyle(
    int widthPx, int pageHeightPx, int dpi, double safeMarginPx, ReadingSide reads) {

  /**
   * 1600 px wide, pages of 15 360 px, 350 dpi (common practice); margin: house default, no source.
   */
  public static final StripStyle DEFAULT = new StripStyle(1600, 15360, 350, 64, ReadingSide.LTR);

  /**
   * The same style on a strip of another width; the safe margin grows and shrinks with it.
   *
   * @param otherPx positive
   */
  public StripStyle ofWidth(int otherPx) {
    double marginPx = safeMarginPx * otherPx / widthPx;
    return new StripStyle(otherPx, pageHeightPx, dpi, marginPx, reads);
  }

  /** The same style read from this side. */
  StripStyle readFrom(ReadingSide side) {
    return new StripStyle(widthPx, pageHeightPx, dpi, safeMarginPx, side);
  }

  public StripStyle {
    if (widthPx <= 0 || pageHeightPx <= 0 || dpi <= 0) {
      throw new IllegalArgumentException(
          "not a strip: " + widthPx + " x " + pageHeightPx + " px at " + dpi + " dpi");
    }
    if (!(safeMarginPx >= 0) || !(2 * safeMarginPx < widthPx)) {
      throw new IllegalArgumentException("no safe margin: " + safeMarginPx);
    }
  }
}
