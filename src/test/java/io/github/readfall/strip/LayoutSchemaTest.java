package io.github.readfall.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.strip.json.LayoutReader;
import io.github.readfall.strip.json.LayoutWriter;
import io.github.readfall.strip.json.ReadLayout;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Holds docs/layout.schema.json and docs/layout.md to what is written and read. */
class LayoutSchemaTest {

  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final Path SOURCES = Path.of("src/main/java/io/github/readfall/strip");

  private final Schema schema;
  private final JsonNode schemaNode;
  private final String page;

  LayoutSchemaTest() throws IOException {
    String text = Files.readString(Path.of("docs/layout.schema.json"));
    this.schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(text, InputFormat.JSON);
    this.schemaNode = JSON.readTree(text);
    this.page = Files.readString(Path.of("docs/layout.md"));
  }

  private List<String> faults(String json) {
    return schema.validate(JSON.readTree(json)).stream().map(Error::toString).toList();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void whatIsWrittenIsAsTheSchemaSays(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 50; i++) {
      String written = LayoutWriter.write(RandomLayout.of(random));
      assertEquals(List.of(), faults(written), written);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"panels\": []}",
        "{\"strip\": {\"widthPx\": 1600, \"heightPx\": 0}, \"panels\": []}",
        "{\"strip\": {\"widthPx\": 1600}, \"panels\": []}",
        "{\"strip\": {\"widthPx\": 1, \"heightPx\": 1}, \"panels\": [{\"panel\": 0, \"box\": [0, 0, 1, 1]}]}",
        "{\"strip\": {\"widthPx\": 1, \"heightPx\": 1}, \"panels\": [{\"panel\": 1, \"box\": [0, 0, 1]}]}",
        "{\"strip\": {\"widthPx\": 1, \"heightPx\": 1}, \"panels\": [{\"panel\": 1, \"box\": [0, 0, 1, -1]}]}",
        "{\"strip\": {\"widthPx\": 1, \"heightPx\": 1}, \"panels\": [], \"balloons\": [{\"pinned\": true}]}",
        "{\"strip\": {\"widthPx\": 1, \"heightPx\": 1}, \"panels\": [], \"balloons\": [{\"id\": \"a\", \"shape\": \"heart\"}]}"
      })
  void theSchemaFindsFaultWhereTheReaderDoes(String json) {
    assertFalse(faults(json).isEmpty(), "the schema lets it pass");
    assertFalse(new LayoutReader().read(json).findings().isEmpty(), "the reader lets it pass");
  }

  @Test
  void theExamplesOnThePageAreFaultlessAndWrittenAsTheyStand() {
    Matcher examples = Pattern.compile("```json\n(.*?)```", Pattern.DOTALL).matcher(page);
    List<String> shown = examples.results().map(found -> found.group(1)).toList();
    assertEquals(2, shown.size());
    for (String example : shown) {
      ReadLayout read = new LayoutReader().read(example);
      assertEquals(List.<Finding>of(), read.findings());
      assertEquals(List.of(), faults(example));
      assertEquals(example, LayoutWriter.write(read.layout().orElseThrow()));
    }
  }

  @Test
  void thePageNamesEveryKeyAndEveryFinding() throws IOException {
    for (String key : keys(schemaNode)) {
      assertTrue(page.contains("`" + key + "`"), key + " is not on the page");
    }
    for (String rule : rules()) {
      assertTrue(page.contains("`layout/" + rule + "`"), rule + " is not on the page");
    }
  }

  private static Set<String> keys(JsonNode rule) {
    Set<String> names = new TreeSet<>(rule.path("properties").propertyNames());
    rule.forEach(part -> names.addAll(keys(part)));
    return names;
  }

  /** Every rule that the code has a word for. */
  private static Set<String> rules() throws IOException {
    Pattern raised =
        Pattern.compile("\\b(?:error|warning|note)\\(\\s*\"([a-z-]+)\"|\"layout/([a-z-]+)\"");
    try (Stream<Path> files = Files.walk(SOURCES)) {
      Set<String> rules =
          files
              .filter(file -> file.toString().endsWith(".java"))
              .map(LayoutSchemaTest::text)
              .flatMap(text -> raised.matcher(text).results())
              .map(found -> found.group(1) == null ? found.group(2) : found.group(1))
              .collect(Collectors.toCollection(TreeSet::new));
      assertTrue(rules.size() >= 16, rules.toString());
      return rules;
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
