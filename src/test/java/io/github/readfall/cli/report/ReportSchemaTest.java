package io.github.readfall.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.viewing.Audit;
import io.github.readfall.base.viewing.LetterKind;
import io.github.readfall.cli.Ran;
import io.github.readfall.job.LetteringAudit;
import io.github.readfall.lettering.style.HouseStyle;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Holds every report to docs/report.schema.json, and docs/report.md to both. */
class ReportSchemaTest {

  private static final Path SCHEMA = Path.of("docs/report.schema.json");
  private static final Path PAGE = Path.of("docs/report.md");
  private static final String EXAMPLE = "src/test/resources/report/report.txt";

  /** A key that stands twice is lost in silence everywhere else. */
  private static final JsonMapper JSON =
      JsonMapper.builder(
              JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build())
          .build();

  private final Schema schema;
  private final JsonNode schemaNode;

  ReportSchemaTest() throws IOException {
    String text = Files.readString(SCHEMA);
    this.schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(text, InputFormat.JSON);
    this.schemaNode = JSON.readTree(text);
  }

  @TestFactory
  Stream<DynamicTest> everyReportIsAsTheSchemaSays() {
    Stream<String> more =
        Stream.of(
            "src/test/resources/report/scripts/empty.txt", "sample-scripts/overdue-tide", EXAMPLE);
    return Stream.concat(Fitted.PATHS.stream(), more)
        .map(
            path ->
                dynamicTest(
                    path,
                    () -> {
                      JsonNode report = report("fit", path, "--json");
                      assertEquals(List.of(), faults(report));
                      assertEquals(List.of(), undescribed(report, schemaNode, ""));
                    }));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "src/test/resources/report/scripts/empty.txt",
        "src/test/resources/report/scripts/faulty.txt",
        "src/test/resources/report/scripts/th.txt",
        "sample-scripts/overdue-tide",
        "sample-scripts/overdue-tide/ep01 --split 3"
      })
  void everyPlanIsAsTheSchemaSays(String arguments) {
    JsonNode report = report((Object[]) ("plan " + arguments + " --json").split(" ", -1));
    assertEquals(List.of(), faults(report));
    assertEquals(List.of(), undescribed(report, schemaNode, ""));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sample-scripts/overdue-tide/ep01",
        "docs/pictures/strip",
        "src/test/resources/report/scripts/empty.txt",
        "src/test/resources/report/scripts/faulty.txt",
        "src/test/resources/report/scripts/ko.txt",
        "src/test/resources/rules/legible/size/flags-lettering-by-its-em",
        "src/test/resources/rules/space/cut/flags-a-balloon",
        "src/test/resources/rules/flow/tail-astray/flags-thirty-degrees-off",
        "src/test/resources/rules/flow/tail-astray/clean-two-speakers-two-tails",
        "src/test/resources/strips/good/rows-read-from-the-right"
      })
  void everyStripIsAsTheSchemaSays(String path, @TempDir Path copies) throws IOException {
    JsonNode checked = report("check", path, "--json");
    assertEquals(List.of(), faults(checked));
    assertEquals(List.of(), undescribed(checked, schemaNode, ""));
    Path copy = copied(Path.of(path), copies);
    JsonNode placed = report("place", copy, "--open-gutters", "--json");
    assertEquals(List.of(), faults(placed));
    assertEquals(List.of(), undescribed(placed, schemaNode, ""));
    assertEquals(placed.at("/strip/panels").isEmpty() ? 0 : 1, placed.path("files").size());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "languages fit sample-scripts/overdue-tide/ep02 --languages de,th",
        "languages fit sample-scripts/overdue-tide/ep01 --languages fi --stand-in",
        "fit sample-scripts/overdue-tide/ep02 --languages de,ko",
        "plan sample-scripts/overdue-tide/ep02 --languages de,nl --lengths w3c"
      })
  void everyReportOnLanguagesIsAsTheSchemaSays(String arguments) {
    JsonNode report = report((Object[]) (arguments + " --json").split(" ", -1));
    assertEquals(List.of(), faults(report));
    assertEquals(List.of(), undescribed(report, schemaNode, ""));
  }

  @Test
  void theReportOfPanelsIsAsTheSchemaSays(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("script.txt"), "PANEL 1\n\nILSE: Well.\n\nPANEL 2\n");
    BufferedImage art = new BufferedImage(1600, 900, BufferedImage.TYPE_INT_RGB);
    for (int i = 100 * 1600; i < 800 * 1600; i++) {
      art.setRGB(i % 1600, i / 1600, i % 1600 > 99 && i % 1600 < 1500 ? 0x406080 + i % 64 : 0);
    }
    ImageIO.write(
        art, "png", Files.createDirectory(folder.resolve("art")).resolve("1.png").toFile());
    JsonNode report = report("panels", folder, "--json");
    assertEquals(1, report.at("/strip/panels").size());
    assertEquals(List.of(), faults(report));
    assertEquals(List.of(), undescribed(report, schemaNode, ""));
  }

  private static Path copied(Path from, Path to) throws IOException {
    if (Files.isRegularFile(from)) {
      return Files.copy(from, to.resolve(from.getFileName()));
    }
    try (Stream<Path> inside = Files.list(from)) {
      for (Path file : inside.toList()) {
        Files.copy(file, to.resolve(file.getFileName()));
      }
    }
    return to;
  }

  @ParameterizedTest
  @CsvSource({"/flow,met", "/flow,move", "/findings/1/mend,balloon"})
  void aStripThatLacksAFieldIsFaulty(String at, String field) {
    JsonNode report = report("check", "docs/pictures/strip", "--json");
    ((ObjectNode) report.at(at)).remove(field);
    assertFalse(faults(report).isEmpty(), "the schema lets a strip pass without " + field);
  }

  @ParameterizedTest
  @CsvSource({"/plan,cuts", "/plan,words", "/plan/split/0,reason", "/plan/perScreen/0,words"})
  void aPlanThatLacksAFieldIsFaulty(String at, String field) {
    JsonNode report = report("plan", "sample-scripts/overdue-tide/ep01", "--split", "2", "--json");
    ((ObjectNode) report.at(at)).remove(field);
    assertFalse(faults(report).isEmpty(), "the schema lets a plan pass without " + field);
  }

  @Test
  void theReportOfNewIsAsTheSchemaSays(@TempDir Path folder) {
    JsonNode report = report("new", folder.resolve("mine"), "--json");
    assertEquals(List.of(), faults(report));
    assertEquals(List.of(), undescribed(report, schemaNode, ""));
  }

  @Test
  void theReportOfAnAuditIsAsTheSchemaSays() {
    HouseStyle style = HouseStyle.DEFAULT;
    List<Audit> audits = new ArrayList<>();
    for (LetterKind kind : LetterKind.values()) {
      audits.add(LetteringAudit.of(kind, 40, 1600, style, true));
    }
    audits.add(Audit.of("p1-2", LetterKind.CAPITAL, 60, 1600, 16, style.phones()));
    List<Finding> findings =
        audits.stream().flatMap(audit -> LetteringAudit.finding(audit, style).stream()).toList();
    JsonNode report = JSON.readTree(new JsonReport("0.1.0").audit(audits, findings));
    assertEquals(List.of(), faults(report));
    assertEquals(List.of(), undescribed(report, schemaNode, ""));
    ((ObjectNode) report.at("/audit/0")).remove("kind");
    ((ObjectNode) report.at("/audit/1/rows/0")).remove("arcmin");
    assertEquals(2, faults(report).size());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "explain --json",
        "explain words/long --json",
        "explain voice/strayed --json",
        "explain script/empty --json",
        "check src/test/resources/cli/series --json"
      })
  void everyExplanationAndCheckOfASeriesIsAsTheSchemaSays(String arguments) {
    JsonNode report = report((Object[]) arguments.split(" ", -1));
    assertEquals(List.of(), faults(report));
    assertEquals(List.of(), undescribed(report, schemaNode, ""));
  }

  @ParameterizedTest
  @CsvSource({
    "space/margin/flags-left,moveTo",
    "space/overflow/flags-text-leaves-its-outline,box",
    "space/cut/flags-a-balloon,cutTo",
    "flow/tail-astray/flags-the-other-way,tailTo",
    "flow/tail-long/flags-the-second-tail,tail"
  })
  void everyKindOfMendIsAsTheSchemaSays(String fixture, String field) {
    JsonNode report = report("check", "src/test/resources/rules/" + fixture, "--json");
    assertTrue(report.path("findings").findValues("mend").stream().anyMatch(m -> m.has(field)));
    assertEquals(List.of(), faults(report));
    assertEquals(List.of(), undescribed(report, schemaNode, ""));
  }

  @ParameterizedTest
  @CsvSource({"explain words/long,/rule,finds", "explain,/rules/0,severity", "explain,'',rules"})
  void anExplanationThatLacksAFieldIsFaulty(String arguments, String at, String field) {
    JsonNode report = report((Object[]) (arguments + " --json").split(" ", -1));
    ((ObjectNode) report.at(at)).remove(field);
    assertFalse(faults(report).isEmpty(), "the schema lets an explanation pass without " + field);
  }

  @ParameterizedTest
  @CsvSource({
    "'',findings",
    "'',readfall",
    "'',balloons",
    "/balloons/0,outline",
    "/balloons/0,fontPx",
    "/balloons/0/lines/0,baselinePx",
    "/balloons/0/lines/0/runs/0,face",
    "/findings/0,message",
    "/target,distanceMm"
  })
  void aReportThatLacksAFieldIsFaulty(String at, String field) {
    JsonNode report = report("fit", EXAMPLE, "--json");
    ((ObjectNode) report.at(at)).remove(field);
    assertFalse(faults(report).isEmpty(), "the schema lets a report pass without " + field);
  }

  @Test
  void aReportWithFieldsThatTheSchemaDoesNotKnowIsNotFaulty() {
    JsonNode report = report("fit", EXAMPLE, "--json");
    ((ObjectNode) report).put("later", 1);
    ((ObjectNode) report.at("/balloons/0")).put("later", 1);
    assertEquals(List.of(), faults(report));
    assertEquals(2, undescribed(report, schemaNode, "").size());
  }

  @Test
  void everyPropertyOfTheSchemaIsDescribed() {
    List<String> mute = new ArrayList<>();
    collectMute(schemaNode, "", mute);
    assertEquals(List.of(), mute);
  }

  @Test
  void thePageNamesEveryFieldOfTheSchema() throws IOException {
    String page = Files.readString(PAGE);
    for (String field : fields(schemaNode)) {
      assertTrue(
          page.contains("`" + field + "`") || page.contains("." + field + "`"),
          field + " is not on the page");
    }
  }

  @Test
  void theExampleOnThePageIsWhatTheProgramPrints() throws IOException {
    String page = Files.readString(PAGE);
    String script = between(page, "```\n", "```");
    assertEquals(Files.readString(Path.of(EXAMPLE)), script);
    ObjectNode shown = (ObjectNode) JSON.readTree(between(page, "```json\n", "```"));
    ObjectNode printed = (ObjectNode) report("fit", EXAMPLE, "--json");
    shown.remove("timings");
    printed.remove("timings");
    assertEquals(shown.toPrettyString(), printed.toPrettyString());
  }

  private static String between(String page, String start, String end) {
    int from = page.indexOf("\n" + start) + 1 + start.length();
    return page.substring(from, page.indexOf("\n" + end, from) + 1);
  }

  private static JsonNode report(Object... args) {
    return JSON.readTree(Ran.of(args).out());
  }

  private List<String> faults(JsonNode report) {
    return schema.validate(report).stream().map(Error::toString).toList();
  }

  /** Fields of a report that the schema has no word for. */
  private List<String> undescribed(JsonNode value, JsonNode unresolved, String at) {
    JsonNode rule = resolved(unresolved);
    List<String> found = new ArrayList<>();
    if (value.isObject()) {
      for (var field : value.properties()) {
        JsonNode of = rule.path("properties").path(field.getKey());
        String name = at + "/" + field.getKey();
        if (of.isMissingNode()) {
          found.add(name);
        } else {
          found.addAll(undescribed(field.getValue(), of, name));
        }
      }
    } else if (value.isArray() && rule.has("items")) {
      value.forEach(item -> found.addAll(undescribed(item, rule.path("items"), at)));
    }
    return found;
  }

  private JsonNode resolved(JsonNode rule) {
    JsonNode at = rule;
    while (at.has("$ref")) {
      at = schemaNode.at(at.path("$ref").asString().substring(1));
    }
    return at;
  }

  private void collectMute(JsonNode rule, String at, List<String> mute) {
    for (var field : rule.path("properties").properties()) {
      boolean says = field.getValue().has("description");
      if (!says && !resolved(field.getValue()).has("description")) {
        mute.add(at + "/" + field.getKey());
      }
    }
    for (var part : rule.properties()) {
      collectMute(part.getValue(), at + "/" + part.getKey(), mute);
    }
  }

  private static Set<String> fields(JsonNode rule) {
    Set<String> names = new TreeSet<>(rule.path("properties").propertyNames());
    rule.forEach(part -> names.addAll(fields(part)));
    return names;
  }
}
