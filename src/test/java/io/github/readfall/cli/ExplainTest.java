package io.github.readfall.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.rules.RulePage;
import io.github.readfall.rules.RulePages;
import io.github.readfall.type.text.DisplayCells;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ExplainTest {

  private static final int WIDTH = 78;

  private static List<String> ids() {
    return Stream.concat(RulePages.rules().stream(), RulePages.others().stream())
        .map(RulePage::id)
        .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"words/long", "flow/inverted", "script/unknown-speaker"})
  void anExplanationIsAsItWas(String id) throws IOException {
    Path golden = Path.of("src/test/resources/cli/explain", id.replace('/', '-') + ".txt");
    Ran ran = Ran.of("explain", id);
    assertEquals(0, ran.status());
    assertEquals("", ran.err());
    assertEquals(Files.readString(golden), ran.out());
  }

  @ParameterizedTest
  @MethodSource("ids")
  void everyExplanationIsPlainTextThatFitsATerminal(String id) {
    Ran ran = Ran.of("explain", id);
    assertEquals(0, ran.status());
    assertTrue(ran.out().startsWith(id + "\n"), ran.out());
    ran.out().lines().forEach(line -> assertTrue(DisplayCells.of(line) <= WIDTH, line));
    ran.out().lines().forEach(line -> assertEquals(line.stripTrailing(), line));
    for (String sign : List.of("**", "`", "](", "```")) {
      assertFalse(ran.out().contains(sign), sign + " in " + ran.out());
    }
    assertFalse(ran.out().lines().anyMatch(line -> line.startsWith("#")), ran.out());
  }

  /** Words are only moved from line to line; none is lost on the way from the page. */
  @ParameterizedTest
  @ValueSource(strings = {"words/long", "legible/size", "space/cut", "voice/strayed"})
  void noWordOfThePageIsLost(String id) throws IOException {
    String page = Files.readString(Path.of("docs/rules", id + ".md"));
    String words = page.replaceAll("```(toml)?|[*`#.]", " ").replaceAll("\\s+", " ").strip();
    String shown = Ran.of("explain", id).out().replaceAll("[*`#.]", " ");
    String tail = shown.lines().skip(2).reduce(id, (a, b) -> a + " " + b);
    assertEquals(words, tail.replaceAll("\\s+", " ").strip());
  }

  @Test
  void withoutARuleEverythingIsListedALineEach() {
    Ran ran = Ran.of("explain");
    assertEquals(0, ran.status());
    for (String id : ids()) {
      List<String> lines =
          ran.out().lines().filter(line -> line.startsWith("  " + id + " ")).toList();
      assertEquals(1, lines.size(), id);
      assertTrue(lines.get(0).matches("  \\S+ +(error|warning|note) +\\S.{8,73}"), lines.get(0));
    }
    assertTrue(ran.out().contains("A balloon with more than 25 words\n"), ran.out());
  }

  @ParameterizedTest
  @CsvSource({
    "words/lng,the closest is words/long",
    "unknown-speaker,the closest is script/unknown-speaker",
    "nonsense,readfall explain lists all",
    "../../style/script,readfall explain lists all"
  })
  void anUnknownRuleIsRefusedWithTheNearest(String typed, String hint) {
    for (Object[] args : new Object[][] {{"explain", typed}, {"explain", typed, "--json"}}) {
      Ran ran = Ran.of(args);
      assertTrue(ran.isRefusedInOneSentence(), ran.toString());
      assertTrue(ran.err().contains('"' + typed + '"') && ran.err().contains(hint), ran.err());
    }
  }

  @Test
  void aSeriesShowsWhatItsOwnStyleSays(@TempDir Path series) throws IOException {
    Files.writeString(
        series.resolve("series.toml"),
        "[limits]\n\"words/long\" = 30\n[severities]\n\"words/long\" = \"error\"\n");
    assertEquals("warning, limit 25", state(Ran.of("explain", "words/long")));
    assertEquals(
        "error, limit 30 in series.toml (default: warning, limit 25)",
        state(Ran.of("explain", "words/long", series)));
    assertEquals("warning, limit 60", state(Ran.of("explain", "words/screen", series)));
    JsonNode rule = json(Ran.of("explain", "words/long", series, "--json")).path("rule");
    assertEquals(30, rule.path("limit").asInt());
    assertEquals("error", rule.path("severity").asString());
    assertTrue(Ran.of("explain", "words/long", series.resolve("no")).isRefusedInOneSentence());
  }

  private static String state(Ran ran) {
    return ran.out().lines().skip(1).findFirst().orElse("");
  }

  @Test
  void jsonHasEveryPartInPlainText() {
    JsonNode report = json(Ran.of("explain", "words/long", "--json"));
    assertEquals("explain", report.path("command").asString());
    assertTrue(report.path("findings").isArray() && report.path("findings").isEmpty());
    JsonNode rule = report.path("rule");
    assertEquals("words/long", rule.path("id").asString());
    for (String part : List.of("finds", "why", "example", "mend", "set", "source")) {
      assertFalse(rule.path(part).asString().isBlank(), part);
    }
    assertTrue(rule.path("mend").asString().endsWith("with the manner joined."), rule.toString());
    assertTrue(
        rule.path("set").asString().contains("\n\n[limits]\n\"words/long\" = 25\n\n[severities]\n"),
        rule.toString());
  }

  private static JsonNode json(Ran ran) {
    assertEquals("", ran.err());
    return JsonMapper.builder().build().readTree(ran.out());
  }
}
