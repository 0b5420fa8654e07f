package io.github.readfall.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class CheckSeriesTest {

  private static final Path SERIES = Path.of("src/test/resources/cli/series");

  @Test
  void theTableIsAsItWas() throws IOException {
    Ran ran = Ran.of("check", SERIES);
    assertEquals("", ran.err());
    assertEquals(
        Files.readString(Path.of("src/test/resources/cli/series.table.txt")),
        ran.out().replace('\\', '/'));
    assertEquals(0, ran.status());
  }

  @ParameterizedTest
  @CsvSource({"error,0", "warning,1", "never,0"})
  void whatIsFoundBetweenEpisodesCounts(String failOn, int status) {
    assertEquals(status, Ran.of("check", SERIES, "--fail-on", failOn).status());
  }

  @Test
  void jsonHasTheSeriesFindingsAtTheTop() {
    JsonNode report =
        JsonMapper.builder().build().readTree(Ran.of("check", SERIES, "--json").out());
    assertEquals(2, report.path("episodes").size());
    JsonNode found = report.path("findings");
    assertEquals(1, found.size());
    assertEquals("voice/strayed", found.path(0).path("rule").asString());
    assertEquals(
        "src/test/resources/cli/series/ep02/script.txt", found.path(0).path("file").asString());
    assertEquals(8, found.path(0).path("line").asInt());
    assertEquals("p1-1", found.path(0).path("balloons").path(0).asString());
  }

  @Test
  void theSampleSeriesIsWithoutAFault() {
    Ran ran = Ran.of("check", "sample-scripts/overdue-tide", "--fail-on", "note");
    assertEquals(0, ran.status(), ran.out());
    assertTrue(
        ran.out().endsWith("2 episodes, 114 balloons; 0 errors, 0 warnings, 0 notes\n"), ran.out());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "--json"})
  void oneEpisodeThatCannotBeReadIsNamedAndNothingIsPrinted(String option, @TempDir Path series)
      throws IOException {
    for (String name : new String[] {"ep01", "ep02", "ep03"}) {
      Files.createDirectory(series.resolve(name));
      Files.writeString(series.resolve(name).resolve("script.txt"), "PANEL 1\n\nILSE: Hush.\n");
    }
    Path broken = series.resolve("ep02/script.txt");
    Files.delete(broken);
    Files.createDirectory(broken);
    Ran ran = option.isEmpty() ? Ran.of("check", series) : Ran.of("check", series, option);
    assertTrue(ran.isRefusedInOneSentence(), ran.toString());
    assertTrue(ran.err().contains(broken.toString()), ran.err());
  }

  /** What the readers of files find can be made graver as well, like what a rule finds. */
  @ParameterizedTest
  @CsvSource({"script/unknown-speaker,1", "voice/unknown,0"})
  void everyFindingIsAsGraveAsTheSeriesSays(String id, int status, @TempDir Path series)
      throws IOException {
    Files.writeString(series.resolve("series.toml"), "[severities]\n\"" + id + "\" = \"error\"\n");
    Files.createDirectory(series.resolve("ep01"));
    Files.copy(SERIES.resolve("ep02/script.txt"), series.resolve("ep01/script.txt"));
    assertEquals(status, Ran.of("check", series).status());
  }

  @Test
  void aSeriesIsNotMended() {
    assertTrue(Ran.of("check", SERIES, "--fix").isRefusedInOneSentence());
  }
}
