package io.github.readfall.type.font;

/**
 * Signs that look like others which more faces have. A word is set in one face, with the like sign
 * of its own face rather than the right sign of another.
 */
final class LikeSigns {

  private LikeSigns() {}

  /**
   * A sign that looks like a character, or the character itself: compatibility equivalents and
   * typewriter forms (Unicode Character Database, decompositions; The Unicode Standard, chapter 6,
   * on hyphens, spaces and apostrophes).
   */
  static int of(int codePoint) {
    return switch (codePoint) {
      case 0x2010, 0x2011, 0x2212 -> '-'; // hyphen, the one that never breaks, minus
      case 0x2012 -> 0x2013; // figure dash
      case 0x2015 -> 0x2014; // horizontal bar
      case 0x00A0 -> ' ';
      case 0x2018, 0x2019, 0x02BC, 0x2032 -> '\'';
      case 0x201C, 0x201D, 0x2033 -> '"';
      default -> codePoint;
    };
  }
}
