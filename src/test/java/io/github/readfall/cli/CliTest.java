package io.github.readfall.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class CliTest {

  /** No word of it is lost, and nothing in it deserves a remark. */
  private static final String CLEAN =
      "Language: en\nCast: Ilse\n\nPANEL 1\nThe mill.\n\nILSE: Good morning.\n";

  /** A name with nothing to say is a warning. */
  private static final String DOUBTFUL = CLEAN + "\nILSE:\n";

  private final Path folder;

  CliTest(@TempDir Path folder) {
    this.folder = folder;
  }

  @Test
  void aCleanScriptEndsWithStatus0AndATable() throws IOException {
    Ran ran = Ran.of("fit", script(CLEAN));
    assertEquals(0, ran.status());
    assertEquals("", ran.err());
    assertTrue(ran.out().contains("p1-1"), ran.out());
    assertTrue(ran.out().contains("1 balloon, 2 words; 0 errors, 0 warnings, 0 notes"), ran.out());
  }

  @ParameterizedTest
  @CsvSource({"error,0", "warning,1", "note,1", "never,0", "WARNING,1"})
  void failOnDecidesWhatAWarningComesTo(String severity, int status) throws IOException {
    Path script = script(DOUBTFUL);
    assertTrue(Ran.of("fit", script).out().contains("0 errors, 1 warning, 0 notes"));
    assertEquals(status, Ran.of("fit", script, "--fail-on", severity).status());
  }

  @ParameterizedTest
  @CsvSource({"error,1", "warning,1", "note,1", "never,0"})
  void anErrorEndsWithStatus1UnlessFailOnIsNever(String severity, int status) throws IOException {
    Path script = script("Language: en\nCast: Ilse\n\nILSE: Nobody draws this.\n\n" + CLEAN);
    assertTrue(Ran.of("fit", script).out().contains("1 error"), Ran.of("fit", script).out());
    assertEquals(1, Ran.of("fit", script).status());
    assertEquals(status, Ran.of("fit", script, "--fail-on", severity).status());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "blah",
        "FIT x",
        "fit",
        "new",
        "fit one two",
        "new one two",
        "fit --nope one",
        "fit one --fail-on",
        "fit one --fail-on grave",
        "fit one --picture",
        "fit one --json=3",
        "fit one --json --json",
        "fit one --picture a.png --picture b.png",
        "--json fit one",
        "fit no-such-place",
        "fit no-such-place --json",
        "fit nul\0byte",
        "fit @no-such-file"
      })
  void whatIsAskedInTheWrongWayIsRefusedInOneSentence(String arguments) {
    Object[] args = arguments.isEmpty() ? new Object[0] : arguments.split(" ", -1);
    Ran ran = Ran.of(args);
    assertTrue(ran.isRefusedInOneSentence(), ran.toString());
  }

  @ParameterizedTest
  @CsvSource({
    "fti x,readfall fit",
    "fit --jsn x,--json",
    "fit x --fail-on grave,'error, warning, note, never'"
  })
  void aRefusalSaysWhatThereIs(String arguments, String hint) {
    Ran ran = Ran.of((Object[]) arguments.split(" ", -1));
    assertTrue(ran.err().contains(hint), ran.err());
  }

  @Test
  void helpAndVersionGoToStandardOutput() {
    assertEquals("Readfall 0.1.0\n", Ran.of("--version").out());
    for (String command : new String[] {"--help", "fit --help", "new --help", "explain --help"}) {
      Ran ran = Ran.of((Object[]) command.split(" ", -1));
      assertEquals(0, ran.status());
      assertEquals("", ran.err());
      assertTrue(ran.out().startsWith("Usage: readfall"), ran.out());
    }
  }

  @Test
  void jsonIsOneDocumentAndNothingElse() throws IOException {
    Ran ran = Ran.of("fit", script(DOUBTFUL), "--json");
    assertEquals("", ran.err());
    JsonNode report = oneDocument(ran.out());
    assertEquals("fit", report.path("command").asString());
    assertEquals("0.1.0", report.path("readfall").asString());
    assertEquals(1, report.path("findings").size());
  }

  @Test
  void jsonOfASeriesHoldsEveryEpisodeInOrder() throws IOException {
    Files.writeString(folder.resolve("series.toml"), "[strip]\nwidth = 1200\n");
    for (String name : new String[] {"ep10", "ep02", "ep01"}) {
      Files.createDirectory(folder.resolve(name));
      Files.writeString(
          folder.resolve(name).resolve("script.txt"), "Title: " + name + "\n" + CLEAN);
    }
    Files.createDirectory(folder.resolve("notes"));
    JsonNode report = oneDocument(Ran.of("fit", folder, "--json").out());
    assertEquals(3, report.path("episodes").size());
    assertEquals("ep01", title(report, 0));
    assertEquals("ep02", title(report, 1));
    assertEquals("ep10", title(report, 2));
    assertTrue(report.path("findings").isArray());
  }

  @Test
  void aSeriesEndsWithTheStatusOfItsWorstEpisode() throws IOException {
    for (String name : new String[] {"a", "b"}) {
      Files.createDirectory(folder.resolve(name));
      Files.writeString(
          folder.resolve(name).resolve("script.txt"), name.equals("a") ? CLEAN : DOUBTFUL);
    }
    assertEquals(0, Ran.of("fit", folder.resolve("a"), "--fail-on", "note").status());
    assertEquals(1, Ran.of("fit", folder, "--fail-on", "warning").status());
  }

  @Test
  void newThenFitIsClean() throws IOException {
    Path series = folder.resolve("mine");
    Ran made = Ran.of("new", series);
    assertEquals(0, made.status());
    assertTrue(made.out().contains(series.resolve("series.toml").toString()), made.out());
    assertTrue(Files.isDirectory(series.resolve("fonts")));
    Ran fitted = Ran.of("fit", series, "--fail-on", "note");
    assertEquals(0, fitted.status(), fitted.out());
    assertTrue(fitted.out().contains("0 errors, 0 warnings, 0 notes"), fitted.out());
  }

  @Test
  void newNamesItsFilesInJson() {
    JsonNode report = oneDocument(Ran.of("new", folder.resolve("mine"), "--json").out());
    assertEquals("new", report.path("command").asString());
    assertEquals(2, report.path("files").size());
    report.path("files").forEach(file -> assertTrue(Files.isRegularFile(Path.of(file.asString()))));
  }

  @Test
  void newOnASeriesRefusesAndChangesNothing() throws IOException {
    Files.writeString(folder.resolve("series.toml"), "# mine\n");
    Ran ran = Ran.of("new", folder);
    assertTrue(ran.isRefusedInOneSentence(), ran.toString());
    assertEquals("# mine\n", Files.readString(folder.resolve("series.toml")));
    try (var files = Files.list(folder)) {
      assertEquals(1, files.count());
    }
  }

  @Test
  void newOnAnEpisodesScriptRefusesAndChangesNothing() throws IOException {
    Files.createDirectory(folder.resolve("ep01"));
    Files.writeString(folder.resolve("ep01/script.txt"), CLEAN);
    assertTrue(Ran.of("new", folder).isRefusedInOneSentence());
    assertTrue(Files.notExists(folder.resolve("series.toml")));
    assertEquals(CLEAN, Files.readString(folder.resolve("ep01/script.txt")));
  }

  @Test
  void newUnderAFileRefuses() throws IOException {
    assertTrue(Ran.of("new", script(CLEAN)).isRefusedInOneSentence());
    assertTrue(Ran.of("new", script(CLEAN).resolve("deeper")).isRefusedInOneSentence());
  }

  @Test
  void aFaultOfOursIsSaidInOneSentenceWithStatus70() {
    StringWriter err = new StringWriter();
    int status = Cli.bug(new IllegalStateException("odd"), new PrintWriter(err));
    assertEquals(70, status);
    assertEquals(1, err.toString().lines().count());
    assertTrue(err.toString().contains("internal error"), err.toString());
  }

  private Path script(String text) throws IOException {
    return Files.writeString(folder.resolve("some.txt"), text);
  }

  private static String title(JsonNode report, int episode) {
    return report.path("episodes").path(episode).path("episode").path("title").asString();
  }

  /** The only JSON value in a text; trailing words are an error. */
  private static JsonNode oneDocument(String text) {
    return JsonMapper.builder()
        .enable(tools.jackson.databind.DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
        .build()
        .readTree(text);
  }
}
