package io.github.readfall.base.viewing;

/**
 * The scale of a screen, measured with a card.
 *
 * <p>Worked example: at 96 pixels to the inch a card is 85.60 × 96 / 25.4 = 323.5 pixels wide.
 *
 * @param pxPerMm pixels to a millimetre, in the units in which a window is laid out: on a screen
 *     that draws four dots for each of them they are still one; positive
 */
public record ScreenScale(double pxPerMm) {

  /** Width of a bank card (ISO/IEC 7810, size ID-1). */
  public static final double CARD_WIDTH_MM = 85.60;

  /** Height of a bank card (ISO/IEC 7810, size ID-1). */
  public static final double CARD_HEIGHT_MM = 53.98;

  private static final double INCH_MM = 25.4;

  /**
   * The scale of a screen that was not measured: 96 pixels to the inch (W3C, CSS Values and Units).
   */
  public static final ScreenScale NOMINAL = new ScreenScale(96 / INCH_MM);

  public ScreenScale {
    if (!(pxPerMm > 0) || Double.isInfinite(pxPerMm)) {
      throw new IllegalArgumentException("no scale: " + pxPerMm + " pixels to a millimetre");
    }
  }

  /** The scale of a screen on which a card is this wide, in pixels. */
  public static ScreenScale ofCard(double cardWidthPx) {
    return new ScreenScale(cardWidthPx / CARD_WIDTH_MM);
  }

  /** A length on this screen, in pixels. */
  public double px(double lengthMm) {
    return lengthMm * pxPerMm;
  }

  /** Pixels to an inch. */
  public double pxPerInch() {
    return px(INCH_MM);
  }
}
