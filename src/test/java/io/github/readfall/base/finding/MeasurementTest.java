package io.github.readfall.base.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasurementTest {

  @ParameterizedTest
  @CsvSource({
    "5.96, 6, dp, 5.9 dp",
    "6.04, 6, dp, 6.1 dp",
    "0.3, 6, dp, 0.3 dp",
    "26, 25, words, 26 words",
    "1, 0, words, 1 word",
    "1, 2, px, 1 px",
    "15.9999999999, 16, arcmin, 16 arcmin",
  })
  void whatFailsDoesNotLookAsIfItPassed(double measured, double limit, String unit, String shown) {
    assertEquals(shown, new Measurement(measured, limit, unit).figure());
  }
}
