package io.github.readfall.lettering.style;

/**
 * The size of all lettering, its air and its conventions, for every voice.
 *
 * <p>Sizes are angles on the narrowest phone of the series, so that they mean the same on a strip
 * of any width.
 *
 * @param readingArcmin height of a capital in minutes of arc; the letters that other scripts are
 *     sized by go with it, in proportion; positive
 * @param marginCaps least distance from ink to outline, in capital heights; not negative
 * @param squareness exponent of the superellipse round speech; 2 is an ellipse, and more is
 *     squarer; at least 2
 * @param typographic true if typed quotes, apostrophes and ellipses are lettered in the form that
 *     the language prints
 * @param dashes the form of dashes
 * @param leadingEm from baseline to baseline, in em; positive
 * @param tracking letterspacing after every letter, in em; may be negative
 * @param minAspect least width of a balloon over its height; positive
 * @param maxAspect greatest width of a balloon over its height; no less than {@code minAspect}
 */
public record Lettering(
    double readingArcmin,
    double marginCaps,
    double squareness,
    boolean typographic,
    Dashes dashes,
    double leadingEm,
    double tracking,
    double minAspect,
    double maxAspect) {

  /**
   * As tall as the capitals of a phone's own body text: 16 sp in a face whose capital is 0.711 em
   * is 11.4 dp, seen at 17.2′ from 362 mm.
   */
  static final double BODY_TEXT_ARCMIN = 17.2;

  /** 20 to 22′ is preferred for reading (U.S. NRC NUREG-0700 Rev. 2, 1.3.1-4). */
  static final double COMFORTABLE_ARCMIN = 20;

  /** All but the size: house defaults, no source. */
  public static final Lettering DEFAULT =
      new Lettering(BODY_TEXT_ARCMIN, 0.75, 2.5, true, Dashes.AS_WRITTEN, 1.15, 0, 1.0, 2.6);

  public Lettering {
    if (!(readingArcmin > 0) || !(leadingEm > 0)) {
      throw new IllegalArgumentException("lettering without a size");
    }
    if (!(marginCaps >= 0) || !(squareness >= 2) || Double.isNaN(tracking)) {
      throw new IllegalArgumentException("no lettering: margin " + marginCaps);
    }
    if (!(minAspect > 0) || !(maxAspect >= minAspect)) {
      throw new IllegalArgumentException("no aspect range: " + minAspect + " to " + maxAspect);
    }
  }

  /**
   * The same lettering at another size and leading.
   *
   * @param size factor on the size; positive
   * @param leading factor on the leading; positive
   */
  Lettering times(double size, double leading) {
    return new Lettering(
        readingArcmin * size,
        marginCaps,
        squareness,
        typographic,
        dashes,
        leadingEm * leading,
        tracking,
        minAspect,
        maxAspect);
  }
}
