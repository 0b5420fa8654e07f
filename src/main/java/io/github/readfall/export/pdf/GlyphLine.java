package io.github.readfall.export.pdf;

import io.github.readfall.type.font.GlyphRow;
import io.github.readfall.type.text.PlacedRun;
import java.util.ArrayList;
import java.util.List;

/**
 * Glyphs of one face side by side at one height, as operand of TJ (ISO 32000-1, 9.4.3): their
 * numbers, and between them the distances by which PDF moves the next to the left.
 *
 * @param xPx origin of the first one, from the left end of its line of text
 * @param risePx height above the baseline
 * @param shown the operand of TJ, without its brackets
 */
record GlyphLine(double xPx, double risePx, String shown) {

  /** A tenth of a thousandth of the em is less than anybody can see. */
  private static final int DIGITS = 1;

  private static final double LEAST = 0.05;

  /** The glyphs of a run; more than one line if some are higher than others. */
  static List<GlyphLine> of(PlacedRun run, EmbeddedFace face) {
    List<GlyphLine> lines = new ArrayList<>();
    GlyphRow row = run.glyphs();
    int from = 0;
    for (int i = 1; i <= row.size(); i++) {
      if (i == row.size() || row.y(i) != row.y(from)) {
        of(run, face, from, i, lines);
        from = i;
      }
    }
    return lines;
  }

  private static void of(
      PlacedRun run, EmbeddedFace face, int from, int to, List<GlyphLine> lines) {
    StringBuilder shown = new StringBuilder();
    double start = run.glyphXPx(from);
    double pen = 0;
    for (int i = from; i < to; i++) {
      if (isLetter(run.glyphs(), i)) {
        double wanted = (run.glyphXPx(i) - start) / run.type().fontPx() * EmbeddedFace.EM;
        if (Math.abs(wanted - pen) > LEAST) {
          double back = Math.rint((pen - wanted) * 10) / 10;
          ContentWriter.number(shown, back, DIGITS);
          pen -= back;
        }
        shown.append(hex(face.code(run.glyphs().glyph(i))));
        pen += face.advance(run.glyphs().glyph(i));
      }
    }
    if (shown.length() > 0) {
      lines.add(new GlyphLine(start, run.glyphYPx(from), shown.toString().replace("><", "")));
    }
  }

  /**
   * Returns true if there is a letter: the sign for a missing one, its first glyph, is none, and
   * must not be shown as text (PDF/UA-1, ISO 14289-1, 7.21.8).
   */
  static boolean isLetter(GlyphRow row, int i) {
    return row.isDrawn(i) && row.glyph(i) != 0;
  }

  /** A glyph as TJ wants it. */
  static String hex(int code) {
    StringBuilder out = new StringBuilder("<");
    ContentWriter.hex(out, code, 4);
    return out.append('>').toString();
  }
}
