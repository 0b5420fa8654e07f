package io.github.readfall.type.font;

/** Something that is drawn with the glyphs of a face and is not in its file. */
public enum Ornament {
  /** Nothing. */
  NONE,
  /** Bars at the head and foot of the capital I. */
  BARRED_I,
  /** A dot over each letter. */
  DOTS_OVER,
  /** A dot under each letter. */
  DOTS_UNDER;

  /** The ornament, as measured on a face. */
  Ornamented of(Face plain) {
    return switch (this) {
      case NONE -> Ornamented.NOTHING;
      case BARRED_I -> BarredCapital.of(plain);
      case DOTS_OVER -> EmphasisDots.over(plain);
      case DOTS_UNDER -> EmphasisDots.under(plain);
    };
  }
}
