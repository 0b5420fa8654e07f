package io.github.readfall.base.viewing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sizes on a screen, against published sizes of cards, inches and density-independent pixels. */
class TrueSizeTest {

  private static ScreenScale perInch(double px) {
    return new ScreenScale(px / 25.4);
  }

  private static TrueSize size(double widthDp, double distanceMm, double pxPerInch) {
    return new TrueSize(new Phone("test", widthDp, 640, distanceMm), perInch(pxPerInch));
  }

  /** 3.370 by 2.125 inches, as ISO/IEC 7810 gives ID-1 in inches, rounded; from memory. */
  @ParameterizedTest
  @CsvSource({"96, 323.5, 204.0", "163, 549.3, 346.4", "218, 734.7, 463.3"})
  void aCardIsAsLargeAsItsStandardSays(double perInch, double widthPx, double heightPx) {
    ScreenScale scale = perInch(perInch);
    assertEquals(widthPx, scale.px(ScreenScale.CARD_WIDTH_MM), 0.06);
    assertEquals(heightPx, scale.px(ScreenScale.CARD_HEIGHT_MM), 0.06);
    assertEquals(3.370 * perInch, scale.px(ScreenScale.CARD_WIDTH_MM), 0.0005 * perInch);
    assertEquals(2.125 * perInch, scale.px(ScreenScale.CARD_HEIGHT_MM), 0.0005 * perInch);
    ScreenScale measured = ScreenScale.ofCard(scale.px(ScreenScale.CARD_WIDTH_MM));
    assertEquals(perInch, measured.pxPerInch(), 1e-9);
  }

  /**
   * A dp is a pixel of a screen of 160 to the inch (Android developer documentation, "Support
   * different pixel densities"), and an inch 96 pixels (W3C, CSS Values and Units, 5.2).
   */
  @ParameterizedTest
  @CsvSource({"360, 160, 360", "411, 160, 411", "360, 96, 216", "390, 240, 585", "412, 320, 824"})
  void aPhoneIsAsWideAsItsDensityIndependentPixels(double dp, double perInch, double widthPx) {
    assertEquals(widthPx, size(dp, 362, perInch).widthPx(), 1e-9);
  }

  @Test
  void aPhoneOf360DpIs57Millimetres() {
    assertEquals(57.15, size(360, 362, 96).widthMm(), 1e-9);
    assertEquals(96, ScreenScale.NOMINAL.pxPerInch(), 1e-9);
  }

  /**
   * An arm's length is 28 inches, and there a pixel of 1/96 inch is 0.0213 degrees wide (W3C, CSS
   * Values and Units, 5.2).
   */
  @Test
  void anArmIsAsLongAsTheReferencePixelSays() {
    assertEquals(0.0213, VisualAngle.of(25.4 / 96, TrueSize.ARM_MM).arcmin() / 60, 0.00005);
  }

  /** By hand: 2 atan(57.15 / 1422.4) = 4.60 degrees, 2 atan(57.15 / 724) = 9.03 degrees. */
  @Test
  void fromAnArmsLengthAPhoneLooksHalfAsLarge() {
    assertEquals(4.60 / 9.03, size(360, 362, 96).shareFromAnArmsLength(), 0.001);
    assertEquals(1, size(360, TrueSize.ARM_MM, 96).shareFromAnArmsLength(), 1e-12);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void aScreenHasAScale(double pxPerMm) {
    assertThrows(IllegalArgumentException.class, () -> new ScreenScale(pxPerMm));
  }
}
