package io.github.readfall.window.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PhonePositionTest {

  private static final PhonePosition TOP = new PhonePosition(0, 1000, 8500);

  @Test
  void theScreenStaysOnTheStrip() {
    assertEquals(0, TOP.at(-10).topPx());
    assertEquals(7500, TOP.at(99_999).topPx());
    assertEquals(0, new PhonePosition(50, 1000, 300).topPx(), "a strip shorter than the screen");
  }

  @ParameterizedTest
  @CsvSource({"0, 1", "499, 1", "500, 2", "6400, 7", "7500, 9"})
  void screensAreCountedFromOneToTheLast(double topPx, int screen) {
    assertEquals(screen, TOP.at(topPx).screen());
    assertEquals(9, TOP.screens());
  }

  @Test
  void aStripOfOneScreenIsScreenOneOfOne() {
    PhonePosition whole = new PhonePosition(0, 1000, 1000);
    assertEquals(1, whole.screen());
    assertEquals(1, whole.screens());
    assertTrue(whole.isAtEnd());
  }

  @Test
  void readingGoesAtThePaceOfThePlace() {
    ScrollPace slowFromTheMiddle = at -> at < 2000 ? 400 : 100;
    assertEquals(200, TOP.after(0.5, slowFromTheMiddle).topPx());
    assertEquals(1650, TOP.at(1600).after(0.5, slowFromTheMiddle).topPx());
  }

  @Test
  void readingStopsAtTheEnd() {
    PhonePosition reading = TOP;
    int ticks = 0;
    while (!reading.isAtEnd() && ticks < 10_000) {
      reading = reading.after(0.016, at -> 1000);
      ticks++;
    }
    assertEquals(7500, reading.topPx());
    assertEquals(7.5 / 0.016, ticks, 1);
    assertFalse(TOP.isAtEnd());
  }

  @Test
  void aPaceThatIsNoPaceMovesNothing() {
    assertEquals(100, TOP.at(100).after(1, at -> -50).topPx());
  }
}
