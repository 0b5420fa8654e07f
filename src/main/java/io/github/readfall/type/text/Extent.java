package io.github.readfall.type.text;

import io.github.readfall.type.font.GlyphRow;
import io.github.readfall.type.font.Ink;

/**
 * The extent of a stretch of glyphs, and the kind of its letters. Strip pixels from the pen's start
 * on the baseline, y downwards.
 *
 * <p>A stretch that is all capitals without descending or accented ink counts from the height of a
 * capital to the baseline, so that lines of capitals are all alike; anything else counts as its
 * ink.
 *
 * @param left leftmost ink
 * @param right rightmost ink
 * @param top highest ink
 * @param bottom lowest ink
 * @param capitalPx height of a capital; 0 if there is none
 * @param smallLetters true if there are letters that are not capitals
 */
record Extent(
    double left, double right, double top, double bottom, double capitalPx, boolean smallLetters) {

  /** Nothing yet. */
  static final Extent NONE =
      new Extent(
          Double.POSITIVE_INFINITY,
          Double.NEGATIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.NEGATIVE_INFINITY,
          0,
          false);

  /**
   * Ink this far past the height of a capital or the baseline is the roundness of an O, not an
   * accent: less than a pixel of antialiasing. House default, no source.
   */
  private static final double OVERSHOOT_PX = 0.75;

  /** The extent with one more glyph, whose origin is at a place. */
  Extent plusGlyph(SizedFace type, GlyphRow row, int i, double xPx) {
    if (!row.isDrawn(i)) {
      return this;
    }
    Ink ink = type.face().ink(row.glyph(i), type.slantDeg());
    if (ink.isEmpty()) {
      return this;
    }
    double scale = type.pxPerUnit();
    double rise = row.y(i);
    double x = xPx + type.lean(rise) * scale;
    return new Extent(
        Math.min(left, x + ink.left() * scale),
        Math.max(right, x + ink.right() * scale),
        Math.min(top, -(rise + ink.top()) * scale),
        Math.max(bottom, -(rise + ink.bottom()) * scale),
        capitalPx,
        smallLetters);
  }

  /** The extent with the kind of letters between two indices of a text. */
  Extent plusLetters(SizedFace type, CharSequence text, int start, int end) {
    boolean capitals = false;
    boolean small = false;
    for (int i = start; i < end; i++) {
      char c = text.charAt(i);
      boolean capital = Character.isUpperCase(c) || Character.isDigit(c);
      capitals |= capital;
      small |= !capital && Character.isLetter(c);
    }
    double height = capitals ? Math.max(capitalPx, type.capitalPx()) : capitalPx;
    return new Extent(left, right, top, bottom, height, smallLetters || small);
  }

  /** The extent with another stretch that starts at a place. */
  Extent plus(Extent other, double xPx) {
    return new Extent(
        Math.min(left, xPx + other.left),
        Math.max(right, xPx + other.right),
        Math.min(top, other.top),
        Math.max(bottom, other.bottom),
        Math.max(capitalPx, other.capitalPx),
        smallLetters || other.smallLetters);
  }

  /** The box of a line with this advance. */
  LineBox box(double penPx) {
    double leftPx = Math.min(0, left);
    double rightPx = Math.max(penPx, right);
    if (top > bottom) {
      return new LineBox(leftPx, rightPx, 0, 0);
    }
    return isPlainCapitals()
        ? new LineBox(leftPx, rightPx, -capitalPx, 0)
        : new LineBox(leftPx, rightPx, top, bottom);
  }

  private boolean isPlainCapitals() {
    return capitalPx > 0
        && !smallLetters
        && -top <= capitalPx + OVERSHOOT_PX
        && bottom <= OVERSHOOT_PX;
  }
}
