package io.github.readfall.base.viewing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Audits of measured heights, against heights, angles and limits that were published. */
class AuditTest {

  /** On a strip as wide in pixels as the phone in dp, a pixel is a dp. */
  private static AuditRow dp(LetterKind kind, double dp, double distanceMm) {
    Phone phone = new Phone("test", 360, 640, distanceMm);
    return Audit.of("", kind, dp, 360, 16, List.of(phone)).own().get(0);
  }

  private static AuditRow mm(LetterKind kind, double mm, double distanceMm) {
    return dp(kind, mm / Phone.DP_MM, distanceMm);
  }

  /** Sources beside the table. */
  @ParameterizedTest
  @CsvFileSource(resources = "/viewing/heights.txt", delimiter = '|')
  void aHeightHasItsAngleAndMillimetres(
      double arcmin, double distanceMm, double heightMm, double dp) {
    AuditRow row = dp(LetterKind.CAPITAL, dp, distanceMm);
    assertEquals(arcmin, row.arcmin(), 0.02);
    assertEquals(heightMm, row.mm(), 0.002);
    assertEquals(dp, row.dp(), 1e-9);
    if (arcmin == LetterKind.CAPITAL.leastArcmin()) {
      assertEquals(dp, row.leastPx(), 0.005);
    }
  }

  /**
   * Fluent reading starts at an x-height of 1.4 mm and 40 cm, and ends at 14 mm, 0.2 to 2 degrees
   * (Legge and Bigelow 2011, Journal of Vision 11(5):8).
   */
  @Test
  void aSmallXPassesFromThePublishedHeightOn() {
    assertEquals(1.4, dp(LetterKind.X_HEIGHT, 10, 400).leastPx() * Phone.DP_MM, 0.005);
    assertTrue(mm(LetterKind.X_HEIGHT, 1.4, 400).passes());
    assertFalse(mm(LetterKind.X_HEIGHT, 1.39, 400).passes());
    assertEquals(120, mm(LetterKind.X_HEIGHT, 14, 400).arcmin(), 0.5);
  }

  /** U.S. NRC NUREG-0700 Rev. 2, 1.3.1-4: height = 6.283 D MA / 21600, MA 16 at least. */
  @ParameterizedTest
  @CsvSource({"292", "362", "390", "508"})
  void theLeastCapitalIsNuregs(double distanceMm) {
    double publishedMm = 6.283 * distanceMm * 16 / 21600;
    double leastMm = dp(LetterKind.CAPITAL, 10, distanceMm).leastPx() * Phone.DP_MM;
    assertEquals(publishedMm, leastMm, 0.0005 * publishedMm);
  }

  /** FAA human-factors web training, "Size": 1/200 of the distance, 17.19 minutes, is enough. */
  @Test
  void oneTwoHundredthOfTheDistancePassesButIsNotEasy() {
    AuditRow row = mm(LetterKind.CAPITAL, 1.81, 362);
    assertEquals(17.19, row.arcmin(), 0.005);
    assertTrue(row.passes());
    assertTrue(row.betterPx() > row.dp());
  }

  /**
   * Phone readers chose x-heights of 1.60 mm at 33.4 cm and 1.83 mm at 39.6 cm (Boccardo et al.
   * 2023, PLoS ONE 18(4):e0282947): what people choose can be read.
   */
  @ParameterizedTest
  @CsvSource({"1.60, 334", "1.83, 396"})
  void sizesThatReadersChosePass(double mm, double distanceMm) {
    assertTrue(mm(LetterKind.X_HEIGHT, mm, distanceMm).passes());
  }

  /** 12′ × 1.54 (Zhang et al. 2020, Optometry and Vision Science 97(10):865-870). */
  @Test
  void anIdeographIsOnePointFiveFourTimesASmallX() {
    double x = dp(LetterKind.X_HEIGHT, 10, 362).leastPx();
    double ideograph = dp(LetterKind.IDEOGRAPH, 10, 362).leastPx();
    assertEquals(1.54, ideograph / x, 0.005);
    assertEquals(16.05, dp(LetterKind.IDEOGRAPH, 10, 362).betterPx(), 0.02);
  }

  @ParameterizedTest
  @EnumSource(LetterKind.class)
  void theLeastHeightPassesAndAHairLessDoesNot(LetterKind kind) {
    Audit audit = Audit.of("", kind, 40, 1080, 16, List.of());
    for (AuditRow row : audit.common()) {
      List<Phone> phone = List.of(row.phone());
      assertTrue(Audit.of("", kind, row.leastPx(), 1080, 16, phone).own().get(0).passes());
      double less = row.leastPx() - 0.001;
      assertFalse(Audit.of("", kind, less, 1080, 16, phone).own().get(0).passes());
    }
  }

  @Test
  void everyCommonWidthIsInEveryHand() {
    Audit audit = Audit.of("", LetterKind.CAPITAL, 40, 1600, 16, List.of());
    assertEquals(8 * 3, audit.common().size());
    double nearest = audit.common().get(23).arcmin();
    assertTrue(nearest > audit.common().get(2).arcmin(), "the narrowest shows it smallest");
    assertTrue(audit.own().isEmpty());
  }

  @Test
  void aPersonsLimitMovesEveryKindWithIt() {
    Audit audit = Audit.of("", LetterKind.X_HEIGHT, 40, 1600, 20, List.of());
    assertEquals(15, audit.leastArcmin(), 1e-9);
    assertEquals(15, audit.betterArcmin(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"0, 1600", "-1, 1600", "NaN, 1600", "40, 0", "40, NaN"})
  void aHeightOrAStripWithoutSizeIsABug(double heightPx, double stripPx) {
    assertThrows(
        IllegalArgumentException.class,
        () -> Audit.of("", LetterKind.CAPITAL, heightPx, stripPx, 16, List.of()));
  }

  @ParameterizedTest
  @CsvSource({"15.99, 15.9, 16.0", "16, 16.0, 16.0", "47.11, 47.1, 47.2", "47.2, 47.2, 47.2"})
  void whatFailsIsNeverWrittenAsIfItPassed(double value, String down, String up) {
    assertEquals(down, AuditRow.down(value));
    assertEquals(up, AuditRow.up(value));
  }
}
