package io.github.readfall.type.font;

import java.util.Arrays;

/**
 * Shaped text: glyphs of one face side by side, in visual order from the left, in design units.
 *
 * <p>A value by agreement: its arrays are never written to. They are arrays because every cue
 * passes through here letter by letter.
 */
public final class GlyphRow {

  private static final int NO_GLYPH_FROM = 0xFFFE; // AWT's mark for "nothing here"

  private final int[] glyphs;
  private final int[] chars;
  private final float[] positions;

  GlyphRow(int[] glyphs, int[] chars, float[] positions) {
    this.glyphs = glyphs;
    this.chars = chars;
    this.positions = positions;
  }

  public int size() {
    return glyphs.length;
  }

  /** The glyph's number in the font file. */
  public int glyph(int i) {
    return glyphs[i];
  }

  /** Returns true if there is a glyph to draw; control characters have none. */
  public boolean isDrawn(int i) {
    return glyphs[i] < NO_GLYPH_FROM;
  }

  /** Index, in UTF-16 units from the start of the shaped text, of the character it comes from. */
  public int charIndex(int i) {
    return chars[i];
  }

  /** The glyph's origin, from the row's start. {@code i} may be {@link #size()}. */
  public double x(int i) {
    return positions[2 * i];
  }

  /** Height of the glyph's origin above the baseline. */
  public double y(int i) {
    return -positions[2 * i + 1];
  }

  /** The pen's whole way, kerning included. */
  public double advance() {
    return x(size());
  }

  /**
   * The glyphs of some of the characters, as a row of their own. Only for a row read from left to
   * right, cut between grapheme clusters.
   *
   * @param fromChar first character, in UTF-16 units from the start of the shaped text
   * @param toChar one past the last
   */
  public GlyphRow slice(int fromChar, int toChar) {
    int first = firstFrom(fromChar);
    int last = firstFrom(toChar);
    int[] someGlyphs = Arrays.copyOfRange(glyphs, first, last);
    int[] someChars = Arrays.copyOfRange(chars, first, last);
    float[] somePositions = Arrays.copyOfRange(positions, 2 * first, 2 * last + 2);
    for (int i = 0; i < someChars.length; i++) {
      someChars[i] -= fromChar;
    }
    float start = somePositions[0];
    for (int i = 0; i < somePositions.length; i += 2) {
      somePositions[i] -= start;
    }
    return new GlyphRow(someGlyphs, someChars, somePositions);
  }

  /**
   * The same glyphs, each moved to the left; the pen's advance is unchanged.
   *
   * @param by distance of each glyph
   */
  public GlyphRow toTheLeft(double[] by) {
    float[] moved = positions.clone();
    for (int i = 0; i < by.length; i++) {
      moved[2 * i] -= (float) by[i];
    }
    return new GlyphRow(glyphs, chars, moved);
  }

  private int firstFrom(int charIndex) {
    int i = 0;
    while (i < size() && chars[i] < charIndex) {
      i++;
    }
    return i;
  }
}
