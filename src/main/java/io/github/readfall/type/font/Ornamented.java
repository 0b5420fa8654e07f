package io.github.readfall.type.font;

import java.awt.Shape;

/** The glyphs of one face with an ornament. In design units, y downwards. */
interface Ornamented {

  /** Nothing added. */
  Ornamented NOTHING =
      new Ornamented() {
        @Override
        public Shape drawn(int glyph, Shape upright) {
          return upright;
        }

        @Override
        public double widening(int glyph) {
          return 0;
        }
      };

  /**
   * A glyph with its ornament.
   *
   * @param upright its outline in the file
   */
  Shape drawn(int glyph, Shape upright);

  /** The width that the pen's advance over a glyph gains. */
  double widening(int glyph);
}
