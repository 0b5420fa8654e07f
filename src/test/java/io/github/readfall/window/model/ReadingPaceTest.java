package io.github.readfall.window.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.readfall.plan.ReadWords;
import io.github.readfall.plan.Screens;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReadingPaceTest {

  private static final double SCREEN = 1000;

  private static ReadingPace pace(ReadWords... words) {
    return new ReadingPace(Screens.of(2500, SCREEN, List.of(words)));
  }

  @Test
  void aScreenOfWordsStaysAsLongAsTheyAreRead() {
    ReadingPace pace = pace(new ReadWords("p1-1", 1, 1100, 1200, 20, 5));
    assertEquals(SCREEN / 5, pace.pxPerSecond(1000));
    assertEquals(SCREEN / 5, pace.pxPerSecond(1999));
  }

  @Test
  void aScreenWithoutWordsIsLookedAt() {
    assertEquals(SCREEN / ReadingPace.LOOK_S, pace().pxPerSecond(0));
  }

  @Test
  void belowTheLastScreenItsPaceHolds() {
    ReadingPace pace = pace(new ReadWords("p1-1", 1, 2100, 2200, 20, 4));
    assertEquals(SCREEN / 4, pace.pxPerSecond(9000));
  }
}
