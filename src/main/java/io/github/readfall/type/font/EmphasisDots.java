package io.github.readfall.type.font;

import com.ibm.icu.text.UnicodeSet;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.HashSet;
import java.util.Set;

/**
 * Dots beside the letters of an emphasised word: over them in Japanese (W3C, Requirements for
 * Japanese Text Layout, 3.3.9, "emphasis dots"), under them in Chinese (W3C, Requirements for
 * Chinese Text Layout, "emphasis dots"). Punctuation has none.
 *
 * @param plain the face
 * @param middleY of all dots, y downwards
 * @param radius of a dot
 * @param without glyphs that have no dot
 */
record EmphasisDots(Face plain, double middleY, double radius, Set<Integer> without)
    implements Ornamented {

  /** Radius and distance from the letters, in em. House default, no source: half a line's gap. */
  private static final double RADIUS_EM = 0.085;

  private static final double GAP_EM = 0.06;

  private static final String FULL_LETTERS = "永国あ"; // the tallest and the squarest

  private static final UnicodeSet SIGNS =
      new UnicodeSet(
              "[[:P:][:S:]&[[:Block=Basic_Latin:][:Block=General_Punctuation:]"
                  + "[:Block=CJK_Symbols_And_Punctuation:][:Block=Halfwidth_And_Fullwidth_Forms:]"
                  + "[:Block=Latin_1_Supplement:][:Block=Katakana:]]]")
          .freeze();

  static EmphasisDots over(Face plain) {
    double centre = letters(plain).getMinY() - (GAP_EM + RADIUS_EM) * plain.unitsPerEm();
    return new EmphasisDots(plain, centre, RADIUS_EM * plain.unitsPerEm(), signs(plain));
  }

  static EmphasisDots under(Face plain) {
    double centre = letters(plain).getMaxY() + (GAP_EM + RADIUS_EM) * plain.unitsPerEm();
    return new EmphasisDots(plain, centre, RADIUS_EM * plain.unitsPerEm(), signs(plain));
  }

  private static Rectangle2D letters(Face plain) {
    Rectangle2D all = new Rectangle2D.Double();
    for (int c : FULL_LETTERS.codePoints().filter(plain::covers).toArray()) {
      all.add(plain.outline(glyph(plain, c), 0).getBounds2D());
    }
    return all;
  }

  private static Set<Integer> signs(Face plain) {
    Set<Integer> glyphs = new HashSet<>();
    for (String sign : SIGNS) {
      if (plain.covers(sign.codePointAt(0))) {
        glyphs.add(glyph(plain, sign.codePointAt(0)));
      }
    }
    return Set.copyOf(glyphs);
  }

  private static int glyph(Face plain, int codePoint) {
    return plain.shape(Character.toString(codePoint)).glyph(0);
  }

  @Override
  public Shape drawn(int glyph, Shape upright) {
    if (without.contains(glyph) || upright.getBounds2D().isEmpty()) {
      return upright;
    }
    double middleX = plain.advanceUnits(glyph) / 2;
    Path2D dotted = new Path2D.Double(Path2D.WIND_NON_ZERO);
    dotted.append(upright, false);
    dotted.append(
        new Ellipse2D.Double(middleX - radius, middleY - radius, 2 * radius, 2 * radius), false);
    return dotted;
  }

  @Override
  public double widening(int glyph) {
    return 0;
  }
}
