package io.github.readfall.font;

/**
 * Shaped text: glyphs of one face side by side, in visual order from the left, in design units.
 *
 * <p>A value by agreement: nobody writes to its arrays. They are arrays because every cue goes
 * through here letter by letter.
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

  /** Whether there is a glyph to draw here at all; control characters have none. */
  public boolean isDrawn(int i) {
    return glyphs[i] < NO_GLYPH_FROM;
  }

  /** Index, in UTF-16 units from the start of the shaped text, of the character it comes from. */
  public int charIndex(int i) {
    return chars[i];
  }

  /** Where the glyph's origin is, from the row's start. {@code i} may be {@link #size()}. */
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
}
