package io.github.readfall.report;

import io.github.readfall.font.FaceHeights;
import io.github.readfall.text.SizeBasis;
import io.github.readfall.text.SizedFace;
import io.github.readfall.typeset.SetBalloon;

/** The height of its letters that a balloon's legibility is judged by. */
final class DecidingHeight {

  private DecidingHeight() {}

  /** In strip pixels: the ideograph's where that decides, else the capital's, else the em. */
  static double px(SetBalloon balloon) {
    SizedFace type = balloon.type();
    FaceHeights heights = type.face().heights();
    boolean ideograph = balloon.language().sizeBasis() == SizeBasis.IDEOGRAPH;
    double units = ideograph ? heights.ideograph() : heights.capital();
    return units > 0 ? units * type.pxPerUnit() : type.fontPx();
  }
}
