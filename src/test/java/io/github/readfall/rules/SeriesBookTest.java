package io.github.readfall.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.rules.voice.SeriesBook;
import io.github.readfall.rules.voice.SeriesRule;
import io.github.readfall.rules.voice.SeriesStrip;
import io.github.readfall.strip.galley.Galley;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Every rule about a series has fixtures, and finds in each what the fixture expects. */
class SeriesBookTest {

  private static final Path FIXTURES = Path.of("src/test/resources/series-rules");

  private final Path scratch;

  SeriesBookTest(@TempDir Path scratch) {
    this.scratch = scratch;
  }

  @Test
  void isSortedById() {
    List<String> ids = SeriesBook.all().stream().map(rule -> rule.spec().id()).toList();
    assertEquals(ids.stream().sorted().distinct().toList(), ids);
  }

  @Test
  void listsEveryRuleThereIs() {
    Set<String> written =
        new ClassFileImporter()
            .withImportOption(new DoNotIncludeTests()).importPackagesOf(SeriesBook.class).stream()
                .filter(type -> type.isAssignableTo(SeriesRule.class) && !type.isInterface())
                .map(JavaClass::getName)
                .collect(Collectors.toSet());
    assertEquals(
        written,
        SeriesBook.all().stream()
            .map(rule -> rule.getClass().getName())
            .collect(Collectors.toSet()));
  }

  @TestFactory
  Stream<DynamicNode> everyRule() {
    return SeriesBook.all().stream()
        .map(
            rule ->
                dynamicContainer(
                    rule.spec().id(),
                    Stream.concat(page(rule), fixtures(rule, FIXTURES.resolve(rule.spec().id())))));
  }

  private Stream<DynamicNode> page(SeriesRule rule) {
    return Stream.of(
        dynamicTest(
            "has a page with every part in order", () -> RuleBookTest.checkParts(rule.spec().id())),
        dynamicTest("has a page whose setting is what holds anyway", () -> checkSetting(rule)));
  }

  private void checkSetting(SeriesRule rule) throws Exception {
    String toml = RuleBookTest.toml(rule.spec().id());
    RuleBookTest.checkSetting(rule.spec().id(), rule.spec().severity(), toml);
    for (Path folder : Fixture.folders(FIXTURES.resolve(rule.spec().id()))) {
      if (!Files.readString(folder.resolve("series.toml")).contains("[limits]")) {
        assertEquals(
            SeriesBook.check(SeriesFixture.strips(folder)),
            SeriesBook.check(SeriesFixture.strips(copy(folder, toml))),
            folder.toString());
      }
    }
  }

  /** The same series with more said in its series.toml, under the same names. */
  private Path copy(Path folder, String moreToml) throws IOException {
    Path copy = Files.createTempDirectory(scratch, "series");
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path to = copy.resolve(folder.relativize(file).toString());
        Files.createDirectories(to.getParent());
        Files.copy(file, to);
      }
    }
    Path style = copy.resolve("series.toml");
    Files.writeString(style, Files.readString(style) + "\n" + moreToml);
    return copy;
  }

  private static Stream<DynamicNode> fixtures(SeriesRule rule, Path parent) {
    List<Path> folders = Fixture.folders(parent);
    return Stream.concat(
        Stream.of("flags-", "clean-").map(kind -> hasOne(kind, folders)),
        folders.stream()
            .map(folder -> dynamicTest(name(folder), folder.toUri(), () -> run(rule, folder))));
  }

  private static DynamicNode hasOne(String kind, List<Path> folders) {
    return dynamicTest(
        "has a fixture " + kind + "*",
        () -> assertTrue(folders.stream().anyMatch(folder -> name(folder).startsWith(kind))));
  }

  private static void run(SeriesRule rule, Path folder) throws Exception {
    SeriesFixture fixture = SeriesFixture.read(folder);
    Fixture words = new Fixture(fixture.strips().get(0).galley(), fixture.expected());
    List<Finding> found =
        SeriesBook.check(fixture.strips()).stream()
            .filter(finding -> finding.rule().equals(rule.spec().id()))
            .toList();
    assertEquals(
        words.expectedFindings(), found.stream().map(f -> print(f, fixture.strips())).toList());
    assertEquals(name(folder).startsWith("clean-"), found.isEmpty());
    IntStream.range(0, found.size())
        .forEach(i -> RuleBookTest.checkWords(found.get(i), words.expectedWords(i)));
  }

  /** For example {@code ep02 p1-1: voice/strayed, 1 balloons, limit 0}. */
  private static String print(Finding finding, List<SeriesStrip> strips) {
    String episode =
        strips.stream()
            .filter(strip -> strip.path().equals(finding.where().file()))
            .map(SeriesStrip::name)
            .findFirst()
            .orElse("no episode");
    return episode + " " + Fixture.print(finding);
  }

  @Test
  void theSampleSeriesKeepsItsVoices() throws Exception {
    Path sample = Path.of("sample-scripts/overdue-tide");
    List<SeriesStrip> strips = SeriesFixture.strips(sample);
    assertTrue(strips.size() > 1);
    assertEquals(List.of(), SeriesBook.check(strips));
  }

  @Test
  void gravityIsThePersonsElseTheRules() throws Exception {
    String toml = "[severities]\n'voice/strayed' = 'error'";
    for (String own : List.of("", toml)) {
      List<SeriesStrip> strips =
          List.of(
              strip("a/ep01/script.txt", "WOUTER", own), strip("a/ep02/script.txt", "WOUTRE", own));
      List<Finding> found = SeriesBook.check(strips);
      assertEquals(
          List.of(own.isEmpty() ? Severity.WARNING : Severity.ERROR),
          found.stream().map(Finding::severity).toList());
      assertEquals("a/ep02/script.txt", found.get(0).where().file());
      assertEquals(3, found.get(0).where().line().orElseThrow());
    }
  }

  private static SeriesStrip strip(String path, String speaker, String toml) throws Exception {
    return new SeriesStrip(
        path, Galley.unplaced(Fixture.set("PANEL 1\n\n" + speaker + ": Hush.\n", toml)));
  }

  @Test
  void aSeriesWithoutEpisodesHasNoFaults() {
    assertEquals(List.of(), SeriesBook.check(List.of()));
    assertFalse(SeriesBook.all().isEmpty());
  }

  private static String name(Path folder) {
    return String.valueOf(folder.getFileName());
  }
}
