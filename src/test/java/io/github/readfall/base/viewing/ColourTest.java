package io.github.readfall.base.viewing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Colours against the Web Content Accessibility Guidelines 2.2. */
class ColourTest {

  @ParameterizedTest(name = "{2} on {3}: {4}")
  @CsvFileSource(resources = "/viewing/contrast.txt", delimiter = '|')
  void contrast(double exact, String published, String one, String other, String why) {
    double ratio = colour(one).contrastWith(colour(other));
    assertEquals(exact, ratio, 0.0001, why);
    assertEquals(ratio, colour(other).contrastWith(colour(one)), "either way round");
    if (!published.equals("-")) {
      BigDecimal printed = new BigDecimal(published);
      // a hair more than nothing, for a ratio that is a whole number but for its last bit
      BigDecimal cut =
          BigDecimal.valueOf(ratio + 1e-9).setScale(printed.scale(), RoundingMode.FLOOR);
      assertEquals(0, printed.compareTo(cut), why);
    }
  }

  /**
   * WCAG 2.2, "relative luminance", note: 0.03928 stood for 0.04045 until May 2021, without
   * practical effect.
   */
  @Test
  void theOlderThresholdGivesTheSameForEveryChannelValue() {
    for (int value = 0; value < 256; value++) {
      double c = value / 255.0;
      double linear = c <= 0.03928 ? c / 12.92 : StrictMath.pow((c + 0.055) / 1.055, 2.4);
      assertEquals(0.2126 * linear, new Colour(value << 16).luminance(), 1e-15);
      assertEquals(0.7152 * linear, new Colour(value << 8).luminance(), 1e-15);
      assertEquals(0.0722 * linear, new Colour(value).luminance(), 1e-15);
    }
  }

  @Test
  void luminanceRunsFromBlackToWhite() {
    assertEquals(0, new Colour(0).luminance());
    assertEquals(1, Colour.WHITE.luminance(), 1e-12);
    for (int value = 1; value < 256; value++) {
      assertTrue(
          new Colour(0x010101 * value).luminance()
              > new Colour(0x010101 * (value - 1)).luminance());
    }
  }

  @ParameterizedTest
  @CsvSource({"#1a2B3c, #1a2b3c", "#abc, #aabbcc", "#000000, #000000", "#00000f, #00000f"})
  void notations(String written, String hex) {
    assertEquals(hex, colour(written).hex());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "#",
        "#12",
        "#1234",
        "#12345",
        "#1234567",
        "123456",
        "#12345g",
        "red",
        " #123456",
        "#123456\n",
        "#١٢٣"
      })
  void whatIsNoColourIsNotRead(String text) {
    assertTrue(Colour.parse(text).isEmpty(), text);
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 0x1000000, 0xff112233})
  void numbersBeyondTwentyFourBitsAreABug(int rgb) {
    assertThrows(IllegalArgumentException.class, () -> new Colour(rgb));
  }

  private static Colour colour(String text) {
    return Colour.parse(text).orElseThrow();
  }
}
