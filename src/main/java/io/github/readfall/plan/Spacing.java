package io.github.readfall.plan;

import io.github.readfall.lettering.style.HouseStyle;

/**
 * The distances on a strip. Lengths are strip pixels; they come from lengths on the narrowest phone
 * of the series, so that they look the same on a strip of any width.
 *
 * @param gapPx from balloon to balloon
 * @param tailRoomPx free below a balloon that has a tail, the gap included
 * @param clearancePx from a balloon to its panel's border
 * @param firstPicture height of the picture seen before its first words, as a share of the panel's
 *     width
 * @param tightGutterPx between panels during an exchange, and between panels of a row
 * @param gutterPx between any other panels, and at the strip's two ends
 * @param sceneGutterPx before a new scene
 * @param sideMarginPx left and right of a panel that is not full bleed
 * @param insetMarginPx from an inset to the border of the panel round it
 * @param leastTailPx the shortest tail that is seen as one
 * @param longTailPx the longest tail that is drawn without need
 */
public record Spacing(
    double gapPx,
    double tailRoomPx,
    double clearancePx,
    double firstPicture,
    double tightGutterPx,
    double gutterPx,
    double sceneGutterPx,
    double sideMarginPx,
    double insetMarginPx,
    double leastTailPx,
    double longTailPx) {

  // All of these in dp: house defaults, no source.
  private static final double GAP_DP = 10; // more than the 6 dp at which balloons look crowded
  private static final double TAIL_ROOM_DP = 22;
  private static final double CLEARANCE_DP = 10; // more than the 3 dp at which edges seem to touch
  private static final double FIRST_PICTURE = 0.15;
  private static final double TIGHT_GUTTER_DP = 20;
  private static final double GUTTER_DP = 48;
  private static final double SCENE_GUTTER_DP = 160; // a quarter of a screen
  private static final double INSET_MARGIN_DP = 12;
  private static final double LEAST_TAIL_DP = 11;
  private static final double LONG_TAIL_DP = 66; // less than the 80 dp at which it is too long

  /** The distances of a series: house defaults, and the side margin of its strip. */
  public static Spacing of(HouseStyle style) {
    double px = style.strip().widthPx() / style.narrowestPhone().widthDp();
    return new Spacing(
        GAP_DP * px,
        TAIL_ROOM_DP * px,
        CLEARANCE_DP * px,
        FIRST_PICTURE,
        TIGHT_GUTTER_DP * px,
        GUTTER_DP * px,
        SCENE_GUTTER_DP * px,
        style.strip().safeMarginPx(),
        INSET_MARGIN_DP * px,
        LEAST_TAIL_DP * px,
        LONG_TAIL_DP * px);
  }
}
