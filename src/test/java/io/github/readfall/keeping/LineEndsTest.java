package io.github.readfall.keeping;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class LineEndsTest {

  static List<String> texts() {
    return KeptScriptTest.texts();
  }

  @ParameterizedTest
  @MethodSource("texts")
  void whatIsNotTouchedComesBackExactly(String onDisk) {
    LineEnds ends = LineEnds.of(onDisk);
    String edited = ends.edited();
    assertEquals(-1, edited.indexOf('\r'));
    assertEquals(onDisk, ends.restored(edited));
  }

  @Test
  void aNewLineGetsTheUsualEndAndTheOthersKeepTheirs() {
    LineEnds ends = LineEnds.of("a\r\nb\nc\r\n");
    assertEquals("a\nb\nc\n", ends.edited());
    assertEquals("a\r\nx\r\nb\nc\r\n", ends.restored("a\nx\nb\nc\n"));
    assertEquals("a\r\nb\nc\r\nd\r\n", ends.restored("a\nb\nc\nd\n"));
    assertEquals("a\r\nc\r\n", ends.restored("a\nc\n"));
    assertEquals("", ends.restored(""));
  }

  @Test
  void oneKindOfEndIsUsedForEveryLine() {
    assertEquals("x\r\ny\r\nz", LineEnds.of("a\r\nb").restored("x\ny\nz"));
    assertEquals("x\ny", LineEnds.of("a").restored("x\ny"));
    assertEquals("\uFEFFx\ry", LineEnds.of("\uFEFFa\r").restored("x\ny"));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void whateverIsTypedIsThereAfterItIsReadAgain(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int round = 0; round < 400; round++) {
      LineEnds ends = LineEnds.of(text(random, List.of("a", "b", "", "\n", "\r\n", "\r")));
      String typed = text(random, List.of("a", "b", "", "\n"));
      assertEquals(typed, LineEnds.of(ends.restored(typed)).edited());
    }
  }

  private static String text(SplittableRandom random, List<String> parts) {
    StringBuilder text = new StringBuilder();
    for (int part = random.nextInt(12); part > 0; part--) {
      text.append(parts.get(random.nextInt(parts.size())));
    }
    return text.toString();
  }
}
