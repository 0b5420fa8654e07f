package io.github.readfall.cli.report;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.font.TextAttribute;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Path;
import java.text.Bidi;
import java.util.HashMap;
import java.util.Map;

/** Reads font files without any of the program's own reading: heights, widths and ink. */
final class FaceProbe {

  private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

  private static final double EM_PX = 1000;

  private final Map<String, Font> fonts = new HashMap<>();

  /** Height of letters over the em: their highest ink above the baseline, as Java sets them. */
  double topEm(String face, String letters) {
    return -ink(set(face, letters, EM_PX), 0).getMinY() / EM_PX;
  }

  /** A run set by Java alone: its glyphs at a size, kerning and ligatures on. */
  GlyphVector set(String face, String text, double fontPx) {
    char[] letters = text.toCharArray();
    boolean rightToLeft =
        Bidi.requiresBidi(letters, 0, letters.length)
            && new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT).isRightToLeft();
    return font(face)
        .deriveFont(
            Map.of(
                TextAttribute.SIZE, (float) fontPx,
                TextAttribute.KERNING, TextAttribute.KERNING_ON,
                TextAttribute.LIGATURES, TextAttribute.LIGATURES_ON))
        .layoutGlyphVector(
            EXACT,
            letters,
            0,
            letters.length,
            rightToLeft ? Font.LAYOUT_RIGHT_TO_LEFT : Font.LAYOUT_LEFT_TO_RIGHT);
  }

  /** What a run set by Java paints when it leans, its pen starting at 0, 0. */
  static Rectangle2D ink(GlyphVector run, double slantDeg) {
    double lean = -Math.tan(Math.toRadians(slantDeg));
    return AffineTransform.getShearInstance(lean, 0)
        .createTransformedShape(run.getOutline())
        .getBounds2D();
  }

  private Font font(String face) {
    return fonts.computeIfAbsent(
        face,
        file -> {
          try {
            return Font.createFont(Font.TRUETYPE_FONT, Path.of(file).toFile());
          } catch (IOException | FontFormatException e) {
            throw new AssertionError(file, e);
          }
        });
  }
}
