package io.github.readfall.rules.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumberTextTest {

  @ParameterizedTest
  @CsvSource({"4.4999, 4.49, 4.5", "13.999999999999, 14, 14", "100, 100, 100", "0.001, 0, 0.01"})
  void whatFailsDoesNotLookAsIfItPassed(double value, String down, String up) {
    assertEquals(down, NumberText.down(value, 2));
    assertEquals(up, NumberText.up(value, 2));
  }

  @ParameterizedTest
  @CsvSource({"15.999, true", "15.99999999999, false", "16, false", "17, false"})
  void whatArithmeticLosesIsNotShort(double measured, boolean isShort) {
    assertEquals(isShort, NumberText.isShort(measured, 16));
  }

  @Test
  void aLongListSaysHowManyMore() {
    assertEquals("1, 2", NumberText.list(List.of(1, 2), 2, i -> "" + i));
    assertEquals("1, 2 and 3 more", NumberText.list(List.of(1, 2, 3, 4, 5), 2, i -> "" + i));
  }
}
