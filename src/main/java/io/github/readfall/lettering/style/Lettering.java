package io.github.readfall.lettering.style;

/**
 * The size of all lettering and its air, for every voice.
 *
 * <p>Sizes are angles on the narrowest phone of the series, so that they mean the same on a strip
 * of any width.
 *
 * @param capArcmin height of a capital in minutes of arc; positive
 * @param ideographArcmin height of an ideograph, kana or hangul in minutes of arc; positive
 * @param xHeightArcmin least height of a lower-case x in minutes of arc; positive
 * @param marginCaps least distance from ink to outline, in capital heights; not negative
 * @param leadingEm from baseline to baseline, in em; positive
 * @param tracking letterspacing after every letter, in em; may be negative
 * @param minAspect least width of a balloon over its height; positive
 * @param maxAspect greatest width of a balloon over its height; no less than {@code minAspect}
 */
public record Lettering(
    double capArcmin,
    double ideographArcmin,
    double xHeightArcmin,
    double marginCaps,
    double leadingEm,
    double tracking,
    double minAspect,
    double maxAspect) {

  /**
   * Capitals of 20′: 20 to 22′ is preferred for reading (U.S. NRC NUREG-0700 Rev. 2, 1.3.1-4).
   * Lower case of 12′: the critical print size, below which reading slows (Legge and Bigelow 2011,
   * Journal of Vision 11(5):8). The rest: house defaults, no source.
   */
  public static final Lettering DEFAULT = new Lettering(20, 24, 12, 0.4, 1.15, 0, 1.0, 2.6);

  public Lettering {
    if (!(capArcmin > 0) || !(ideographArcmin > 0) || !(xHeightArcmin > 0) || !(leadingEm > 0)) {
      throw new IllegalArgumentException("lettering without a size");
    }
    if (!(marginCaps >= 0) || Double.isNaN(tracking)) {
      throw new IllegalArgumentException("no lettering: margin " + marginCaps);
    }
    if (!(minAspect > 0) || !(maxAspect >= minAspect)) {
      throw new IllegalArgumentException("no aspect range: " + minAspect + " to " + maxAspect);
    }
  }
}
