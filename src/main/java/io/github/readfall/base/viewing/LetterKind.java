package io.github.readfall.base.viewing;

import java.util.Locale;

/** The letters that are measured, with the least angle at which they can be read. */
public enum LetterKind {
  /**
   * A capital without an accent: 16′ or more, 20 to 22′ preferred (ISO 9241-3 as quoted in U.S. NRC
   * NUREG-0700 Rev. 2, 1.3.1-4).
   */
  CAPITAL("a capital", 16, 20),

  /**
   * A small x: 12′, the critical print size of 0.2 degrees, below which reading slows (Legge and
   * Bigelow 2011, Journal of Vision 11(5):8).
   */
  X_HEIGHT("a small x", 12, 12),

  /**
   * A full ideograph or syllable: 18.5′, which is 1.54 times a small x (Zhang et al. 2020,
   * Optometry and Vision Science 97(10):865-870); preferred 24.2′, a critical size for Chinese that
   * is known at second hand alone.
   */
  IDEOGRAPH("an ideograph or syllable", 18.5, 24.2);

  private final String name;
  private final double leastArcmin;
  private final double betterArcmin;

  LetterKind(String name, double leastArcmin, double betterArcmin) {
    this.name = name;
    this.leastArcmin = leastArcmin;
    this.betterArcmin = betterArcmin;
  }

  /** Its name in a sentence, e.g. {@code a capital}. */
  public String inWords() {
    return name;
  }

  /** The word in options and reports, e.g. {@code x-height}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The least height at which it can be read, in minutes of arc. */
  public double leastArcmin() {
    return leastArcmin;
  }

  /** The height from which on it is read with ease, in minutes of arc. */
  public double betterArcmin() {
    return betterArcmin;
  }
}
