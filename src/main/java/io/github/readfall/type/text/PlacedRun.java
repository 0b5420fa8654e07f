package io.github.readfall.type.text;

import io.github.readfall.type.font.GlyphRow;

/**
 * Glyphs of one face in a line.
 *
 * @param type face, size and slant
 * @param glyphs in visual order
 * @param text what they stand for, in logical order
 * @param xPx where the run starts, from the line's left end
 * @param advancePx the pen's way, kerning included, letterspacing not
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

  /** Where a glyph's origin is, from the line's left end. */
  public double glyphXPx(int i) {
    return xPx + glyphs.x(i) * type.pxPerUnit() + trackingPx * lettersBefore(i);
  }

  /** How far a glyph's origin is above the baseline. */
  public double glyphYPx(int i) {
    return glyphs.y(i) * type.pxPerUnit();
  }

  /** How many letters the run has, ligatures and marked letters counted once. */
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
