package io.github.readfall.base.viewing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** How a strip looks on a phone, against worked-out tables. */
class PhoneTest {

  private static final double MEAN_DISTANCE_MM = 362;

  /** Android developer documentation, "Support different pixel densities": 160 to the inch. */
  @Test
  void aDensityIndependentPixelIsA160thOfAnInch() {
    assertEquals(0.15875, Phone.DP_MM, 1e-12);
  }

  /** Bababekova et al. 2011, Optometry and Vision Science 88(7): 36.2 cm, own text message. */
  @Test
  void theDefaultPhoneIsNarrowAndHeldAtTheMeanDistance() {
    assertEquals(360, Phone.SMALL.widthDp());
    assertEquals(MEAN_DISTANCE_MM, Phone.SMALL.distanceMm());
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/viewing/pixels.txt", delimiter = '|')
  void capitalHeights(double stripPx, double phoneDp, double arcmin, double heightPx) {
    Phone phone = new Phone("test", phoneDp, 800, MEAN_DISTANCE_MM);
    double px = phone.lengthPx(new VisualAngle(arcmin), stripPx);
    assertEquals(heightPx, px, 0.06);
    assertEquals(arcmin, phone.angleOf(px, stripPx).arcmin(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"10, 800, 360, 4.5", "1600, 1600, 360, 360", "1, 1080, 430, 0.39815"})
  void aStripFillsTheWidthOfTheScreen(double px, double stripPx, double phoneDp, double dp) {
    assertEquals(dp, new Phone("test", phoneDp, 800, 362).dp(px, stripPx), 0.00001);
  }

  @Test
  void theNarrowestPhoneShowsAStripSmallest() {
    Phone wide = new Phone("wide", 430, 932, MEAN_DISTANCE_MM);
    assertTrue(Phone.SMALL.angleOf(30, 1080).arcmin() < wide.angleOf(30, 1080).arcmin());
  }

  @ParameterizedTest
  @CsvSource({
    "0, 640, 362",
    "-360, 640, 362",
    "NaN, 640, 362",
    "360, 0, 362",
    "360, NaN, 362",
    "360, 640, 0",
    "360, 640, -1",
    "360, 640, NaN"
  })
  void aPhoneWithoutSizeOrDistanceIsABug(double widthDp, double heightDp, double distanceMm) {
    assertThrows(
        IllegalArgumentException.class, () -> new Phone("x", widthDp, heightDp, distanceMm));
  }
}
