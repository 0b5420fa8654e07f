package io.github.readfall.export.pdf;

import io.github.readfall.base.viewing.Colour;

/**
 * The style of a text of a proof.
 *
 * @param fontPt its em, in points
 * @param bold true for bold
 * @param colour of its letters
 */
record TextStyle(double fontPt, boolean bold, Colour colour) {

  static final Colour INK = new Colour(0x2b2a28);
  static final Colour QUIET = new Colour(0x66635d);

  static final TextStyle TITLE = new TextStyle(22, true, INK);
  static final TextStyle SUBTITLE = new TextStyle(10, false, QUIET);
  static final TextStyle HEADING = new TextStyle(7.6, true, INK);
  static final TextStyle TEXT = new TextStyle(7.2, false, INK);
  static final TextStyle STRONG = new TextStyle(7.2, true, INK);
  static final TextStyle ASIDE = new TextStyle(7.2, false, QUIET);
  static final TextStyle FIGURE = new TextStyle(8.6, false, INK);
  static final TextStyle FIGURE_NAME = new TextStyle(8.6, false, QUIET);

  TextStyle in(Colour other) {
    return new TextStyle(fontPt, bold, other);
  }
}
