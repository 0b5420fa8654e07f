package io.github.readfall.place;

import io.github.readfall.style.HouseStyle;
import io.github.readfall.viewing.Phone;

/**
 * The distances that placing keeps, in strip pixels. They lie above the limits of the rules, so
 * that what is placed is not merely just right. House defaults, no source.
 */
record Air(double gapPx, double tailRoomPx, double clearPx, double leastTailPx, double longTailPx) {

  static Air of(HouseStyle style) {
    Phone phone = style.narrowestPhone();
    double dp = style.strip().widthPx() / phone.widthDp();
    return new Air(10 * dp, 22 * dp, 8 * dp, 11 * dp, 66 * dp);
  }
}
