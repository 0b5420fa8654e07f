package io.github.readfall.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A clear violation of each rule, as somebody meets it who runs the check. */
class EveryRuleTest {

  private static final Path FIXTURES = Path.of("src/test/resources/rules");
  private static final List<String> GRAVITIES = List.of("error", "warning", "note");

  @TempDir private Path scratch = Path.of("");

  @TestFactory
  Stream<DynamicTest> isReportedOnceWithItsNumbersAndAdvice() throws IOException {
    return sorted(FIXTURES).stream()
        .flatMap(group -> sorted(group).stream())
        .flatMap(rule -> sorted(rule).stream())
        .filter(folder -> folder.getFileName().toString().startsWith("flags-"))
        .filter(folder -> !Files.exists(folder.resolve("fonts.txt"))) // faces made by the fixture
        .filter(folder -> !folder.endsWith("flags-no-tail")) // a tail left out is worked out
        .map(folder -> dynamicTest(name(folder), folder.toUri(), () -> check(folder)));
  }

  private static String name(Path folder) {
    return FIXTURES.relativize(folder).toString().replace('\\', '/');
  }

  private void check(Path folder) throws IOException {
    Path series = Files.createTempDirectory(scratch, "series");
    Path episode = Files.createDirectory(series.resolve("ep01"));
    for (Path file : sorted(folder)) {
      boolean house = file.endsWith("series.toml");
      Files.copy(file, (house ? series : episode).resolve(file.getFileName()));
    }
    Ran ran = Ran.of("check", episode, "--json", "--fail-on", "note");
    assertEquals(1, ran.status(), ran.err());
    assertEquals("", ran.err());
    JsonNode report = JsonMapper.builder().build().readTree(ran.out());
    String rule = name(folder).replaceFirst("/[^/]*$", "");
    List<JsonNode> found =
        report
            .path("findings")
            .valueStream()
            .filter(finding -> finding.path("rule").asString().equals(rule))
            .toList();
    assertFalse(found.isEmpty(), ran.out());
    found.forEach(EveryRuleTest::isWhole);
    long places = found.stream().map(EveryRuleTest::place).distinct().count();
    assertEquals(places, found.size(), "one thing is found twice: " + found);
  }

  private static String place(JsonNode finding) {
    return finding.path("balloons") + " " + finding.path("message");
  }

  private static void isWhole(JsonNode finding) {
    String all = finding.toString();
    assertTrue(GRAVITIES.contains(finding.path("severity").asString()), all);
    assertTrue(finding.path("message").asString().endsWith("."), all);
    assertTrue(finding.path("advice").asString().endsWith("."), all);
    if (!finding.has("measured")) {
      return;
    }
    assertTrue(finding.path("limit").isNumber(), all);
    assertFalse(finding.path("unit").asString().isEmpty(), all);
  }

  private static List<Path> sorted(Path folder) {
    try (Stream<Path> inside = Files.list(folder)) {
      return inside.sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
