package io.github.readfall.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.strip.json.JsonLine;
import io.github.readfall.strip.json.LayoutReader;
import io.github.readfall.strip.json.LayoutWriter;
import io.github.readfall.strip.json.ReadLayout;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is read from layout.json and written to it. */
class LayoutFileTextTest {

  private static final Path FOLDER = Path.of("src/test/resources/layout");
  private static final String GOOD = text(FOLDER.resolve("good.json"));

  /** A fault in a file: the file, what is found, and what is used all the same. */
  @TestFactory
  Stream<DynamicTest> everyFaultIsNamedAndTheRestIsUsed() {
    return Stream.of(text(FOLDER.resolve("faults.txt")).split("(?m)^=== ", -1))
        .skip(1)
        .map(
            part ->
                DynamicTest.dynamicTest(
                    part.lines().findFirst().orElseThrow(),
                    () -> assertEquals(expected(part), found(given(part)))));
  }

  private static String given(String part) {
    String json = part.substring(part.indexOf('\n') + 1, part.indexOf("\n---\n"));
    return json.replace("<BOM>", "\uFEFF").replace("<CR>\n", "\r\n").replace("<END>", "");
  }

  private static String expected(String part) {
    return part.substring(part.indexOf("\n---\n") + 5).strip();
  }

  private static String found(String json) {
    ReadLayout read = new LayoutReader().read(json);
    StringBuilder found = new StringBuilder();
    for (Finding finding : read.findings()) {
      found
          .append(finding.where().line().orElseThrow())
          .append(':')
          .append(finding.where().column().orElseThrow())
          .append(' ')
          .append(finding.severity().word())
          .append(' ')
          .append(finding.rule())
          .append(": ")
          .append((finding.message() + " " + finding.advice()).strip())
          .append('\n');
    }
    return found + read.layout().map(LayoutWriter::write).orElse("nothing").strip();
  }

  @Test
  void whatIsFaultlessIsReadWithoutAWordAndWrittenAsItWas() {
    ReadLayout read = new LayoutReader().read(GOOD);
    assertEquals(List.of(), read.findings());
    assertEquals(GOOD, LayoutWriter.write(read.layout().orElseThrow()));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void whatIsWrittenIsReadAgain(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 200; i++) {
      Layout layout = RandomLayout.of(random);
      String written = LayoutWriter.write(layout);
      Layout again = new LayoutReader().read(written).layout().orElseThrow();
      assertEquals(layout, again, written);
      assertEquals(written, LayoutWriter.write(again));
    }
  }

  @Test
  void numbersAreRoundedToAHundredthAndNeverToNothing() {
    assertEquals("0.33", JsonLine.number(1 / 3.0));
    assertEquals("12345678.9", JsonLine.number(12_345_678.9));
    assertEquals("0", JsonLine.number(-0.001));
    assertEquals("10000000", JsonLine.number(1e7));
    Layout tiny = Layout.of(1e-9, 1e-9, List.of());
    assertEquals(Layout.of(0.01, 0.01, List.of()), again(tiny));
  }

  @Test
  void whatANewerVersionKnowsIsKept() {
    String newer =
        GOOD.replace("\"readfall-layout\": 1", "\"readfall-layout\": 7")
            .replace("\"heightPx\": 24800", "\"heightPx\": 24800, \"depth\": {\"mm\": 1.50}");
    ReadLayout read = new LayoutReader().read(newer);
    assertEquals(
        List.of("layout/newer-version", "layout/unknown-key"),
        read.findings().stream().map(Finding::rule).toList());
    assertEquals(newer, LayoutWriter.write(read.layout().orElseThrow()));
  }

  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13, 14})
  void noTextAtAllMakesTheReaderThrow(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Set<String> rules = new TreeSet<>();
    for (int i = 0; i < 500; i++) {
      String text = damaged(random);
      ReadLayout read = new LayoutReader().read(text);
      read.findings().forEach(finding -> rules.add(finding.rule()));
      assertTrue(read.layout().isPresent() || gravest(read) == Severity.ERROR, text);
      read.layout()
          .map(LayoutWriter::write)
          .ifPresent(written -> assertEquals(written, writtenAgain(written), text));
    }
    assertTrue(rules.size() >= 5, "the damage is too much alike: " + rules);
  }

  private static Severity gravest(ReadLayout read) {
    return read.findings().stream().map(Finding::severity).min(Severity::compareTo).orElseThrow();
  }

  private static String writtenAgain(String written) {
    return LayoutWriter.write(new LayoutReader().read(written).layout().orElseThrow());
  }

  private static Layout again(Layout layout) {
    return new LayoutReader().read(LayoutWriter.write(layout)).layout().orElseThrow();
  }

  private static final List<String> SLIPS =
      List.of(
          "\"",
          "{",
          "}",
          "[",
          "]",
          ",",
          ":",
          "-",
          "0",
          "9",
          "1e999",
          "NaN",
          "-Infinity",
          "null",
          "true",
          "\\",
          "\\u00",
          "\uD800",
          "\uDC00",
          "\u0000",
          "\uFEFF",
          "/*",
          "//",
          "\r",
          "\n",
          ".5",
          "\"panel\": 1,",
          "\"id\": \"p1-1\",",
          "😀",
          "1.5",
          "00",
          "{}",
          "[]",
          "\"\"");

  private static String damaged(SplittableRandom random) {
    StringBuilder text = new StringBuilder(GOOD);
    int slips = 1 + random.nextInt(4);
    for (int i = 0; i < slips; i++) {
      int at = random.nextInt(text.length() + 1);
      int end = Math.min(text.length(), at + random.nextInt(12));
      switch (random.nextInt(8)) {
        case 0 -> text.setLength(at);
        case 1, 2 -> text.delete(at, end);
        case 3 -> text.insert(at, text.substring(at, end));
        case 4 -> text.insert(random.nextInt(text.length() + 1), text.substring(at, end));
        default -> text.replace(at, random.nextBoolean() ? at : end, pick(random));
      }
    }
    return text.toString();
  }

  private static String pick(SplittableRandom random) {
    return SLIPS.get(random.nextInt(SLIPS.size()));
  }

  @Test
  void hugeAndDeepFilesTakeNoTime() {
    String balloon = "{\"id\": \"p1-1\", \"box\": [0, 0, 1, -1], \"x\": 1}";
    List<String> many = new ArrayList<>();
    for (int i = 0; i < 100_000; i++) {
      many.add(balloon);
    }
    String start = "{\"strip\": {\"widthPx\": 1, \"heightPx\": 1}, \"panels\": [], \"balloons\": [";
    String huge = start + String.join(",", many) + "]}";
    assertTrue(huge.length() > 4_500_000);
    ReadLayout read = assertTimeout(Duration.ofSeconds(20), () -> new LayoutReader().read(huge));
    assertEquals(101, read.findings().size());
    assertEquals(1, read.layout().orElseThrow().balloons().size());
    String deep = "[".repeat(1_000_000);
    ReadLayout none = assertTimeout(Duration.ofSeconds(20), () -> new LayoutReader().read(deep));
    assertFalse(none.layout().isPresent());
    assertEquals("layout/syntax", none.findings().get(0).rule());
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
