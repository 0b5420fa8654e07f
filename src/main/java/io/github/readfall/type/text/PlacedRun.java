package io.github.readfall.type.text;

import io.github.readfall.type.font.GlyphRow;
import io.github.readfall.type.font.Ornament;

/**
 * Glyphs of one face in a line.
 *
 * @param type face, size and slant
 * @param glyphs in visual order
 * @param text that they show, in logical order
 * @param xPx start of the run, from the line's left end
 * @param advancePx with kerning, without letterspacing
 * @param trackingPx letterspacing after each letter
 */
public record PlacedRun(
    SizedFace type, GlyphRow glyphs, String text, double xPx, double advancePx, double trackingPx) {

  /**
   * The same run further left, and its glyphs within it.
   *
   * @param px the run
   * @param glyphUnits each glyph, in design units
   */
  PlacedRun moved(double px, double[] glyphUnits) {
    return new PlacedRun(type, glyphs.toTheLeft(glyphUnits), text, xPx - px, advancePx, trackingPx);
  }

  /** What is drawn with its glyphs and is not in the font file. */
  public Ornament ornament() {
    return type.face().ornament();
  }

  /** The origin of a glyph, from the line's left end. */
  public double glyphXPx(int i) {
    return xPx + glyphs.x(i) * type.pxPerUnit() + trackingPx * lettersBefore(i);
  }

  /** The height of a glyph's origin above the baseline. */
  public double glyphYPx(int i) {
    return glyphs.y(i) * type.pxPerUnit();
  }

  /** The number of letters in the run, ligatures and marked letters counted once. */
  public int letters() {
    return glyphs.size() == 0 ? 0 : 1 + changes(glyphs.size() - 1);
  }

  private int lettersBefore(int i) {
    return trackingPx == 0 ? 0 : changes(i);
  }

  private int changes(int last) {
    int letters = 0;
    for (int g = 1; g <= last; g++) {
      letters += glyphs.charIndex(g) == glyphs.charIndex(g - 1) ? 0 : 1;
    }
    return letters;
  }
}
