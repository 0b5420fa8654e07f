package io.github.readfall.art;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class NaturalOrderTest {

  @Test
  void numbersAreCountedNotSpelt() {
    List<String> names =
        List.of("page10.png", "page2.png", "Page1.png", "page2b.png", "page002.png", "cover.png");
    assertEquals(
        List.of("cover.png", "Page1.png", "page002.png", "page2.png", "page2b.png", "page10.png"),
        names.stream().sorted(NaturalOrder::compare).toList());
  }

  @Test
  void numbersMayBeLongerThanAnyInteger() {
    assertTrue(
        NaturalOrder.compare("p99999999999999999999999.png", "p100000000000000000000000.png") < 0);
  }

  @Test
  void differentNamesAreNeverEqual() {
    assertTrue(NaturalOrder.compare("A.png", "a.png") != 0);
    assertTrue(NaturalOrder.compare("p01.png", "p1.png") != 0);
    assertEquals(0, NaturalOrder.compare("p1.png", "p1.png"));
  }
}
