package io.github.readfall.lettering.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TighteningTest {

  @ParameterizedTest
  @CsvSource({
    "1,      1,      0,      1,    1,    0",
    "0.968,  1,      0,      0.96, 1,    0",
    "0.97,   0.9399, 0,      0.97, 0.93, 0",
    "1,      0.29,   -0.011, 1,    0.29, -0.02",
    "0.57,   0.58,   -0.03,  0.57, 0.58, -0.03",
  })
  void whatIsToldIsNeverLooserThanWhatGoesIn(
      double size, double leading, double tracking, double sizeTold, double leadTold, double told) {
    assertEquals(
        new Tightening(sizeTold, leadTold, told),
        new Tightening(size, leading, tracking).inHundredths());
  }

  @Test
  void nothingLooserIsATightening() {
    assertThrows(IllegalArgumentException.class, () -> new Tightening(1.01, 1, 0));
    assertThrows(IllegalArgumentException.class, () -> new Tightening(1, 1, 0.01));
  }
}
