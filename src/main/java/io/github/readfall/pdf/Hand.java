package io.github.readfall.pdf;

import io.github.readfall.viewing.Colour;

/**
 * How a text of a proof is written.
 *
 * @param fontPt its em, in points
 * @param bold whether in bold
 * @param colour of its letters
 */
record Hand(double fontPt, boolean bold, Colour colour) {

  static final Colour INK = new Colour(0x2b2a28);
  static final Colour QUIET = new Colour(0x66635d);

  static final Hand TITLE = new Hand(22, true, INK);
  static final Hand SUBTITLE = new Hand(10, false, QUIET);
  static final Hand HEADING = new Hand(7.6, true, INK);
  static final Hand TEXT = new Hand(7.2, false, INK);
  static final Hand STRONG = new Hand(7.2, true, INK);
  static final Hand ASIDE = new Hand(7.2, false, QUIET);
  static final Hand FIGURE = new Hand(8.6, false, INK);
  static final Hand FIGURE_NAME = new Hand(8.6, false, QUIET);

  Hand in(Colour other) {
    return new Hand(fontPt, bold, other);
  }
}
