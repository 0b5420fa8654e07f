package io.github.readfall.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class PlanTest {

  private static final String SCRIPT =
      """
      Title: The Long Ebb
      Episode: 3
      Cast: Ilse, Otto

      SCENE Mill

      PANEL  long shot

      ILSE: It is counting again.

      SCENE Harbour

      PANEL  medium shot

      OTTO: Again?
      """;

  private final Path series;
  private final Path episode;

  PlanTest(@TempDir Path series) throws IOException {
    this.series = series;
    this.episode = Files.createDirectory(series.resolve("ep03"));
    Files.writeString(series.resolve("series.toml"), "[strip]\nwidth = 1600\n");
    Files.writeString(episode.resolve("script.txt"), SCRIPT);
  }

  private static JsonNode json(Object... args) {
    return JsonMapper.builder().build().readTree(Ran.of(args).out());
  }

  @Test
  void aPlanSaysWhatTheEpisodeComesTo() {
    Ran ran = Ran.of("plan", episode);
    assertEquals(0, ran.status(), ran.err());
    assertEquals("", ran.err());
    assertTrue(ran.out().contains("2 s for 5 words, not counting the pictures"), ran.out());
    assertTrue(ran.out().contains("1 canvas page\n"), ran.out());
    assertFalse(ran.out().contains("other episode"), ran.out());
  }

  @Test
  void heightsAddUpInTheReport() {
    JsonNode report = json("plan", episode, "--json");
    double sum = 213;
    for (JsonNode panel : report.path("plan").path("panels")) {
      sum += panel.path("gutterPx").asDouble() + panel.path("heightPx").asDouble();
    }
    assertEquals(report.path("plan").path("heightPx").asDouble(), sum);
    assertEquals(report.path("strip").path("heightPx").asDouble(), sum);
    assertEquals(1.5, report.path("plan").path("seconds").asDouble());
    assertTrue(report.path("plan").path("split").isMissingNode());
  }

  @Test
  void anEpisodeIsComparedWithTheOthersOfItsSeries() throws IOException {
    for (String name : new String[] {"ep01", "ep02"}) {
      Path other = Files.createDirectory(series.resolve(name));
      String more = name.equals("ep01") ? "" : "\nPANEL\n\nILSE: One two three.\n";
      Files.writeString(other.resolve("script.txt"), SCRIPT + more);
    }
    JsonNode others = json("plan", episode, "--json").path("plan").path("others");
    assertEquals(2, others.path("episodes").asInt());
    assertEquals(6.5, others.path("words").asDouble());
    JsonNode all = json("plan", series, "--json").path("episodes");
    assertEquals(3, all.size());
    assertEquals(5, all.path(1).path("plan").path("others").path("words").asDouble());
  }

  @Test
  void tooTallAnEpisodeIsAWarningWithASplit() throws IOException {
    Files.writeString(series.resolve("series.toml"), "[delivery]\nmax-episode-height = 1500\n");
    Ran ran = Ran.of("plan", episode, "--fail-on", "warning");
    assertEquals(1, ran.status());
    assertTrue(ran.out().contains("[plan/too-tall]"), ran.out());
    assertTrue(ran.out().contains("The scene \"Harbour\" begins here."), ran.out());
    Files.writeString(
        series.resolve("series.toml"),
        "[delivery]\nmax-episode-height = 1500\n[severities]\n'plan/too-tall' = 'note'\n");
    assertEquals(0, Ran.of("plan", episode, "--fail-on", "warning").status());
  }

  @Test
  void partsAreWrittenBesideTheEpisodeAndPlanAsPromised() throws IOException {
    JsonNode report = json("plan", episode, "--split", "2", "--write", "--json");
    assertEquals(2, report.path("files").size());
    assertEquals(SCRIPT, Files.readString(episode.resolve("script.txt")));
    String second = Files.readString(series.resolve("ep03b/script.txt"));
    assertTrue(second.startsWith("Title: The Long Ebb\nEpisode: 3b\nCast: Ilse, Otto\n"), second);
    for (int i = 0; i < 2; i++) {
      Path part = series.resolve(i == 0 ? "ep03a" : "ep03b");
      assertEquals(
          report.path("plan").path("split").path(i).path("heightPx").asDouble(),
          json("plan", part, "--json").path("plan").path("heightPx").asDouble(),
          "a part is as tall alone as in the split");
    }
  }

  @Test
  void partsThatAreThereAlreadyAreLeftAlone() throws IOException {
    Files.createDirectory(series.resolve("ep03a"));
    Ran ran = Ran.of("plan", episode, "--split", "2", "--write");
    assertTrue(ran.out().contains("ep03b"), ran.out());
    assertTrue(Files.readString(series.resolve("ep03c/script.txt")).contains("Episode: 3c"));
    try (var inside = Files.list(series.resolve("ep03a"))) {
      assertEquals(0, inside.count());
    }
  }

  @Test
  void partsOfABareScriptLieBesideIt() throws IOException {
    Path bare = Files.writeString(series.resolve("ebb.txt"), SCRIPT);
    Ran.of("plan", bare, "--split", "2", "--write");
    assertTrue(Files.exists(series.resolve("ebb-a.txt")));
    assertTrue(Files.readString(series.resolve("ebb-b.txt")).contains("SCENE Harbour"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "plan no-such-place",
        "plan",
        "plan EP --split 1",
        "plan EP --split 27",
        "plan EP --split two",
        "plan EP --split 3",
        "plan EP --write",
        "plan SERIES --split 2",
        "plan SERIES --write"
      })
  void whatCannotBePlannedIsRefusedInOneSentence(String arguments) throws IOException {
    Path other = Files.createDirectory(series.resolve("ep04"));
    Files.writeString(other.resolve("script.txt"), SCRIPT);
    String[] args =
        arguments
            .replace("EP", episode.toString())
            .replace("SERIES", series.toString())
            .split(" ", -1);
    Ran ran = Ran.of((Object[]) args);
    assertTrue(ran.isRefusedInOneSentence(), ran.toString());
    try (var inside = Files.list(series)) {
      assertEquals(3, inside.count());
    }
  }

  @ParameterizedTest
  @CsvSource({"ep01", "ep02"})
  void theSamplesPartsSayAllThatTheEpisodeSays(String name) throws IOException {
    Path sample = Path.of("sample-scripts/overdue-tide", name, "script.txt");
    Files.copy(sample, episode.resolve("script.txt"), StandardCopyOption.REPLACE_EXISTING);
    JsonNode whole = json("plan", episode, "--split", "3", "--write", "--json");
    int words = 0;
    for (String part : new String[] {"ep03a", "ep03b", "ep03c"}) {
      words += json("plan", series.resolve(part), "--json").path("plan").path("words").asInt();
    }
    assertEquals(whole.path("plan").path("words").asInt(), words);
  }
}
