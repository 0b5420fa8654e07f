package io.github.readfall.window.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ScrollTargetTest {

  @Test
  void aTargetComfortablyInViewMovesNothing() {
    assertEquals(500, ScrollTarget.start(500, 1000, 700, 900, 9000));
  }

  @Test
  void whatIsOutOfViewComesToTheMiddle() {
    assertEquals(4600, ScrollTarget.start(500, 1000, 5000, 5200, 9000));
  }

  @Test
  void whatIsAtTheEdgeOfTheViewIsBroughtIn() {
    assertEquals(950, ScrollTarget.start(500, 1000, 1400, 1500, 9000));
  }

  @Test
  void whatIsTallerThanTheViewStartsNearItsTop() {
    double start = ScrollTarget.start(0, 1000, 5000, 8000, 9000);
    assertTrue(start < 5000 && start > 4800, "starts at " + start);
  }

  @Test
  void theViewNeverLeavesTheStrip() {
    assertEquals(0, ScrollTarget.start(500, 1000, 0, 20, 9000));
    assertEquals(9000, ScrollTarget.start(500, 1000, 9980, 10_000, 9000));
  }

  @Test
  void aScrollAnimationStartsAtThePresentPositionAndEndsAtItsTarget() {
    assertEquals(100, ScrollAnimation.at(100, 900, 0));
    assertEquals(900, ScrollAnimation.at(100, 900, 1));
    assertEquals(900, ScrollAnimation.at(100, 900, 7));
    double before = 100;
    for (int tenth = 1; tenth < 10; tenth++) {
      double share = tenth / 10.0;
      double now = ScrollAnimation.at(100, 900, share);
      assertTrue(now > before && now < 900, "at " + share + ": " + now);
      before = now;
    }
  }
}
