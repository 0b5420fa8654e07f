package io.github.readfall.type.font;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/**
 * The capital I with bars at its head and foot, as thick as its stem. The distance to its
 * neighbours stays that of the plain letter.
 *
 * @param glyph of the plain letter
 * @param drawn with its bars, the origin where the pen starts
 * @param wider how much the letter has gained
 */
record BarredCapital(int glyph, Shape drawn, double wider) implements Ornamented {

  /** Width of a bar, in stems and at least in heights of the letter. House default, no source. */
  private static final double BAR_STEMS = 3;

  private static final double LEAST_BAR = 0.42;

  /**
   * The most of the letter's height that one bar takes, in heavy faces. House default, no source.
   */
  private static final double THICKEST = 0.24;

  /** The share of the letter at its ends whose middle a bar is put on. */
  private static final double END = 0.12;

  static Ornamented of(Face plain) {
    GlyphRow row = plain.shape("I");
    int glyph = row.glyph(0);
    Area letter = new Area(plain.outline(glyph, 0));
    Rectangle2D box = letter.getBounds2D();
    if (box.isEmpty()) {
      return NOTHING;
    }
    double stem = slice(letter, box, 0.45, 0.55).getWidth();
    double thick = Math.min(stem, THICKEST * box.getHeight());
    double wide = Math.max(BAR_STEMS * stem, LEAST_BAR * box.getHeight());
    Area barred = new Area(letter);
    barred.add(bar(slice(letter, box, 0, END).getCenterX(), box.getMinY(), wide, thick));
    barred.add(
        bar(slice(letter, box, 1 - END, 1).getCenterX(), box.getMaxY() - thick, wide, thick));
    Rectangle2D grown = barred.getBounds2D();
    AffineTransform shift =
        AffineTransform.getTranslateInstance(box.getMinX() - grown.getMinX(), 0);
    return new BarredCapital(
        glyph, shift.createTransformedShape(barred), grown.getWidth() - box.getWidth());
  }

  /** The bounds of a letter between two shares of its height, from the top. */
  private static Rectangle2D slice(Area letter, Rectangle2D box, double from, double to) {
    double height = box.getHeight();
    Area part =
        new Area(
            new Rectangle2D.Double(
                box.getX(), box.getY() + from * height, box.getWidth(), (to - from) * height));
    part.intersect(letter);
    return part.getBounds2D();
  }

  /** A bar with ends as round as a pen's. */
  private static Area bar(double middle, double top, double wide, double thick) {
    return new Area(new RoundRectangle2D.Double(middle - wide / 2, top, wide, thick, thick, thick));
  }

  @Override
  public Shape drawn(int other, Shape upright) {
    return other == glyph ? drawn : upright;
  }

  @Override
  public double widening(int other) {
    return other == glyph ? wider : 0;
  }
}
