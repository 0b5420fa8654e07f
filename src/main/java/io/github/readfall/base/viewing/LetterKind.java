package io.github.readfall.base.viewing;

import java.util.List;
import java.util.Locale;

/**
 * The letters that a script is sized and judged by, each with the angles at which it is lettered
 * and read, in minutes of arc. docs/reading-size.md has the table.
 *
 * <p>An error is a size below three quarters of the least: house default, no source.
 */
public enum LetterKind {
  /**
   * A capital without an accent: 16′ or more, 20 to 22′ preferred (ISO 9241-3 as quoted in U.S. NRC
   * NUREG-0700 Rev. 2, 1.3.1-4). Usually as tall as in a phone's own body text: 16 sp, a capital of
   * 0.711 em, seen from 362 mm.
   */
  CAPITAL("a capital", Angles.CAPITAL, "H \u0397 \u041D"), // Latin, Greek, Cyrillic

  /**
   * A small x: 12′, the critical print size of 0.2 degrees, below which reading slows (Legge and
   * Bigelow 2011, Journal of Vision 11(5):8).
   */
  X_HEIGHT("a small x", Angles.SMALL, "x \u03C7 \u0445"),

  /**
   * A full ideograph: 18.5′, which is 1.54 times a small x (Zhang et al. 2020, Optometry and Vision
   * Science 97(10):865-870); preferred 24.2′, a critical size for Chinese that is known at second
   * hand alone.
   */
  IDEOGRAPH("an ideograph", Angles.SQUARE, "国 永 口"),

  /** A full Korean syllable, as an ideograph: house default, no source. */
  SYLLABLE("a Korean syllable", Angles.SQUARE, "한 가"),

  /**
   * A full kana: recognised at the size of a capital (Cai and Huang, Comparison legibility test on
   * Japanese characters and English letters).
   */
  KANA("a kana", Angles.CAPITAL, "あ ア"),

  /** The Hebrew he. Letters are all of one height, as capitals are: house default, no source. */
  HE("the letter he", Angles.CAPITAL, "ה"),

  /** The Arabic alef, the tallest letter, as a capital: house default, no source. */
  ALEF("an alef", Angles.CAPITAL, "ا"),

  /** The tooth of a joined Arabic letter such as beh, as a small x: house default, no source. */
  TOOTH("the tooth of a letter such as beh", Angles.SMALL, "بب"),

  /** The Thai ko kai. Letters are of one height, as capitals are: house default, no source. */
  KO_KAI("the letter ko kai", Angles.CAPITAL, "ก"),

  /** The Devanagari ka up to its head line, as a capital: house default, no source. */
  KA("the letter ka", Angles.CAPITAL, "क");

  /** The letters of scripts with capitals and small letters. */
  public static final List<LetterKind> CASED = List.of(CAPITAL, X_HEIGHT);

  private enum Angles {
    CAPITAL(17.2, 16, 12, 20),
    SMALL(12, 12, 9, 12),
    SQUARE(24.2, 18.5, 14, 24.2);

    private final double usual;
    private final double least;
    private final double error;
    private final double better;

    Angles(double usual, double least, double error, double better) {
      this.usual = usual;
      this.least = least;
      this.error = error;
      this.better = better;
    }
  }

  private final String name;
  private final Angles arcmin;
  private final String letters;

  LetterKind(String name, Angles arcmin, String letters) {
    this.name = name;
    this.arcmin = arcmin;
    this.letters = letters;
  }

  /** Its name in a sentence, e.g. {@code a capital}. */
  public String inWords() {
    return name;
  }

  /** The word in options and reports, e.g. {@code x-height}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The letters to measure: the first one that a face has. */
  public List<String> letters() {
    return List.of(letters.split(" ", -1));
  }

  /**
   * Returns true if it fills a square, so that all of its ink counts, and not that above a line.
   */
  public boolean isSquare() {
    return this == IDEOGRAPH || this == SYLLABLE || this == KANA;
  }

  /** The height at which it is lettered if a capital is {@link #CAPITAL}'s own. */
  public double usualArcmin() {
    return arcmin.usual;
  }

  /** The least height at which it can be read. */
  public double leastArcmin() {
    return arcmin.least;
  }

  /** The least height if a series asks for another one of a capital, in proportion. */
  public double leastArcmin(double capitalArcmin) {
    return arcmin.least * capitalArcmin / CAPITAL.arcmin.least;
  }

  /** The height below which it is so small that a strip should not go out. */
  public double errorArcmin() {
    return arcmin.error;
  }

  /** The same if a series asks for another one of a capital, in proportion. */
  public double errorArcmin(double capitalArcmin) {
    return arcmin.error * capitalArcmin / CAPITAL.arcmin.error;
  }

  /** The height from which on it is read with ease. */
  public double betterArcmin() {
    return arcmin.better;
  }
}
