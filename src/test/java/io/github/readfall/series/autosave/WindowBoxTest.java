package io.github.readfall.series.autosave;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WindowBoxTest {

  private static final WindowBox MAIN = new WindowBox(0, 25, 1600, 975);
  private static final WindowBox LEFT = new WindowBox(-1280, 0, 1280, 1024);

  private static WindowBox box(String numbers) {
    List<Integer> all = Arrays.stream(numbers.split(" ", -1)).map(Integer::valueOf).toList();
    return new WindowBox(all.get(0), all.get(1), all.get(2), all.get(3));
  }

  @ParameterizedTest
  @CsvSource({
    "100 100 800 600,    100 100 800 600,    as it was",
    "-1200 50 900 700,   -1200 50 900 700,   on the left screen",
    "1450 100 800 600,   1450 100 800 600,   enough is in sight to take hold of it",
    "1550 100 800 600,   400 212 800 600,    too little of it is",
    "5000 5000 800 600,  400 212 800 600,    on a screen that is gone",
    "100 -300 800 600,   400 212 800 600,    its title is above the screen",
    "100 990 800 600,    400 212 800 600,    its title is below the screen",
    "0 25 9000 9000,     0 25 1600 975,      larger than the screen",
    "-9000 0 9000 9000,  -1280 0 1280 1024,  larger than the left screen",
  })
  void itComesBackWhereItCanBeTakenHoldOf(String left, String back, String why) {
    assertEquals(box(back), box(left).onScreen(List.of(MAIN, LEFT)), why);
  }

  @Test
  void whatIsOnAScreenStaysThereEveryTime() {
    WindowBox once = box("7000 -20 3000 900").onScreen(List.of(MAIN, LEFT));
    assertEquals(once, once.onScreen(List.of(MAIN, LEFT)));
  }

  @Test
  void withoutAScreenItStaysAsItIs() {
    assertEquals(box("1 2 3 4"), box("1 2 3 4").onScreen(List.of()));
  }
}
