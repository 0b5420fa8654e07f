package io.github.readfall.type.text;

import io.github.readfall.base.viewing.LetterKind;
import io.github.readfall.type.font.Face;
import io.github.readfall.type.font.Ornament;

/**
 * A face at a size.
 *
 * @param face the font file
 * @param fontPx its em in strip pixels; positive
 * @param slantDeg slant of its letters, on top of the face's own
 */
public record SizedFace(Face face, double fontPx, double slantDeg) {

  /** The same face, its glyphs drawn with something added. */
  public SizedFace with(Ornament ornament) {
    return new SizedFace(face.with(ornament), fontPx, slantDeg);
  }

  /** Strip pixels in one design unit. */
  public double pxPerUnit() {
    return fontPx / face.unitsPerEm();
  }

  /** Height of letters of a kind, in strip pixels; 0 if the face has none. */
  public double heightPx(LetterKind kind) {
    return face.heightUnits(kind) * pxPerUnit();
  }

  /** Height of a capital, in strip pixels; 0 if the face has none. */
  public double capitalPx() {
    return heightPx(LetterKind.CAPITAL);
  }

  /** The shift to the right of a point at a height, by the slant; both in design units. */
  double lean(double heightUnits) {
    return slantDeg == 0 ? 0 : StrictMath.tan(StrictMath.toRadians(slantDeg)) * heightUnits;
  }
}
