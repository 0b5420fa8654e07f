package io.github.readfall.lettering.typeset;

import io.github.readfall.base.viewing.LetterKind;
import io.github.readfall.base.viewing.Phone;
import io.github.readfall.base.viewing.VisualAngle;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.style.Lettering;
import io.github.readfall.type.font.Face;
import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.LetterHeight;
import io.github.readfall.type.text.SizedFace;

/**
 * The size of type that a reader of the narrowest phone can read: chosen as an angle, in minutes of
 * arc, and converted to strip pixels by the face's own heights.
 *
 * @param phone it is judged on
 * @param stripWidthPx width of the strip
 * @param lettering the angles asked for
 */
record ReadingSize(Phone phone, double stripWidthPx, Lettering lettering) {

  static ReadingSize of(HouseStyle style) {
    return new ReadingSize(style.narrowestPhone(), style.strip().widthPx(), style.lettering());
  }

  /** Height of a capital at reading size, in strip pixels. */
  double capitalPx() {
    return usualPx(LetterKind.CAPITAL);
  }

  /**
   * The em of a face at reading size, in strip pixels: no letter that its script is judged by is
   * smaller than it is usually lettered.
   *
   * @param face to be sized
   * @param language whose script is lettered in it
   * @param capitals whether all is in capitals, so that no small letter decides
   */
  double emPx(Face face, Language language, boolean capitals) {
    return LetterHeight.of(new SizedFace(face, 1, 0), language, !capitals).stream()
        .mapToDouble(letter -> usualPx(letter.kind()) / letter.px())
        .max()
        .orElseThrow();
  }

  private double usualPx(LetterKind kind) {
    double size = lettering.readingArcmin() / LetterKind.CAPITAL.usualArcmin();
    return phone.lengthPx(new VisualAngle(kind.usualArcmin() * size), stripWidthPx);
  }
}
