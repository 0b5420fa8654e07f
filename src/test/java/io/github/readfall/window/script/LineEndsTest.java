package io.github.readfall.window.script;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.readfall.script.RandomScript;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class LineEndsTest {

  static IntStream seeds() {
    return IntStream.range(0, 200);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void givesAnUnchangedTextBackAsItCame(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    String file = RandomScript.withSlips(RandomScript.sound(random), random);
    LineEnds ends = LineEnds.of(file);
    assertEquals(file, ends.restored(ends.withLineFeeds()));
    assertEquals(-1, ends.withLineFeeds().indexOf('\r'));
  }

  @ParameterizedTest(name = "{0} shown, {1} typed, {2} in the file")
  @CsvSource(
      delimiter = '|',
      value = {
        "a rn b rn c         | a n x n b n c         | a rn x rn b rn c",
        "m a rn b rn         | a n                   | m a rn",
        "a r b               | a n x n b             | a r x r b",
        "a n b rn c n d      | a n b n x n c n d     | a n b rn x n c n d",
        "a rn b n c rn d     | a n b n c n d n e     | a rn b n c rn d rn e",
        "a r b n c           | a n n c               | a r r c",
        "a                   | a n b                 | a n b",
        "-                   | a n b                 | a n b"
      })
  void keepsTheEndsOfLinesThatAreNotTouched(String before, String typed, String after) {
    assertEquals(text(after), LineEnds.of(text(before)).restored(text(typed)));
  }

  private static String text(String written) {
    return written
        .replace("-", "")
        .replace("rn", "\r\n")
        .replace("r ", "\r ")
        .replace(" ", "")
        .replace("n", "\n")
        .replace("m", "\uFEFF");
  }

  @Test
  void showsEveryLineThatTheReaderReads() {
    assertEquals("a\nb\nc\nd\ne", LineEnds.withLineFeeds("\uFEFFa\u0085b\u2028c\u2029d\r\ne"));
  }
}
