package io.github.readfall.lettering.typeset;

import io.github.readfall.base.viewing.Phone;
import io.github.readfall.base.viewing.VisualAngle;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.style.Lettering;
import io.github.readfall.type.font.Face;
import io.github.readfall.type.font.FaceHeights;
import io.github.readfall.type.text.Language;

/**
 * The size of type that a reader of the narrowest phone can read: chosen as an angle, in minutes of
 * arc, and converted to strip pixels by the face's own heights.
 *
 * @param phone it is judged on
 * @param stripWidthPx width of the strip
 * @param lettering the angles asked for
 */
record ReadingSize(Phone phone, double stripWidthPx, Lettering lettering) {

  private static final double X_PER_CAPITAL = 12 / 17.2;
  private static final double IDEOGRAPH_PER_CAPITAL = 24.2 / 17.2;

  static ReadingSize of(HouseStyle style) {
    return new ReadingSize(style.narrowestPhone(), style.strip().widthPx(), style.lettering());
  }

  /** Height of a capital at reading size, in strip pixels. */
  double capitalPx() {
    return phone.lengthPx(new VisualAngle(lettering.readingArcmin()), stripWidthPx);
  }

  /**
   * The em of a face at reading size, in strip pixels.
   *
   * @param face to be sized
   * @param language whose script is lettered in it
   * @param latin the face that Latin text of the same voice is lettered in
   * @param capitals whether all is in capitals, so that no small letter decides
   */
  double emPx(Face face, Language language, Face latin, boolean capitals) {
    return switch (language.sizeBasis()) {
      case CAPITAL -> byCapital(face.heights(), capitals);
      case IDEOGRAPH -> byIdeograph(face.heights());
      case EM -> byCapital(latin.heights(), true) * language.emFactor();
    };
  }

  private double byCapital(FaceHeights heights, boolean capitals) {
    double em = heights.capital() > 0 ? capitalPx() / heights.capital() : 0;
    if ((!capitals || em == 0) && heights.xHeight() > 0) {
      em = Math.max(em, lengthPx(lettering.readingArcmin() * X_PER_CAPITAL) / heights.xHeight());
    }
    return (em == 0 ? capitalPx() / (SetBalloon.CAPITAL_EM * heights.unitsPerEm()) : em)
        * heights.unitsPerEm();
  }

  private double byIdeograph(FaceHeights heights) {
    double units = heights.ideograph() > 0 ? heights.ideograph() : heights.unitsPerEm();
    return lengthPx(lettering.readingArcmin() * IDEOGRAPH_PER_CAPITAL)
        / units
        * heights.unitsPerEm();
  }

  private double lengthPx(double arcmin) {
    return phone.lengthPx(new VisualAngle(arcmin), stripWidthPx);
  }
}
