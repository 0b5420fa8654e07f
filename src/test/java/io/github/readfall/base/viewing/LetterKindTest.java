package io.github.readfall.base.viewing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LetterKindTest {

  /** The page states the angles of every letter: default, warning and error. */
  @Test
  void thePageHasTheAnglesOfEveryLetter() throws IOException {
    List<List<String>> stated =
        Files.readAllLines(Path.of("docs/reading-size.md")).stream()
            .filter(row -> row.startsWith("| ") && row.contains("′ |"))
            .map(row -> List.of(row.split(" \\| ", -1)).subList(2, 5))
            .toList();
    List<List<String>> held =
        Arrays.stream(LetterKind.values())
            .map(kind -> Stream.of(kind.usualArcmin(), kind.leastArcmin(), kind.errorArcmin()))
            .map(angles -> angles.map(angle -> (angle + "′").replace(".0′", "′")).toList())
            .toList();
    assertEquals(held, stated);
  }

  /** Three quarters, rounded to whole minutes. */
  @ParameterizedTest
  @EnumSource(LetterKind.class)
  void belowThreeQuartersOfTheLeastIsAnError(LetterKind kind) {
    assertEquals(0.75 * kind.leastArcmin(), kind.errorArcmin(), 0.5);
    assertEquals(kind.errorArcmin(), kind.errorArcmin(12));
    assertEquals(kind.leastArcmin(), kind.leastArcmin(16));
  }
}
