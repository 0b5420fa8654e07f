package io.github.readfall.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.style.ReadStyle;
import io.github.readfall.lettering.style.StyleReader;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.rules.legible.LegibleRules;
import io.github.readfall.rules.legible.SizeTier;
import io.github.readfall.rules.legible.SmallestLetters;
import io.github.readfall.rules.legible.TightestReadable;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.order.OrderRules;
import io.github.readfall.rules.space.FreeRoom;
import io.github.readfall.rules.space.SpaceRules;
import io.github.readfall.rules.voice.SeriesBook;
import io.github.readfall.rules.voice.SeriesRule;
import io.github.readfall.rules.voice.SeriesStrip;
import io.github.readfall.rules.voice.VoiceRules;
import io.github.readfall.rules.words.WordLimits;
import io.github.readfall.rules.words.WordRules;
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

/** Every rule has a page and fixtures, and finds in each fixture what the fixture expects. */
class RuleBookTest {

  private static final List<String> PAGE =
      List.of(
          "What it finds.",
          "Why a reader minds.",
          "Example.",
          "How to put it right.",
          "How to set it.",
          "Source.");

  private static final List<Class<?>> DOORS =
      List.of(
          RuleBook.class,
          RulePage.class,
          RulePage.Part.class,
          RulePages.class,
          OrderRules.class,
          SpaceRules.class,
          FreeRoom.class,
          LegibleRules.class,
          SizeTier.class,
          SmallestLetters.class,
          TightestReadable.class,
          WordRules.class,
          WordLimits.class,
          VoiceRules.class,
          SeriesBook.class,
          SeriesRule.class,
          SeriesStrip.class);

  private static final JavaClasses CODE =
      new ClassFileImporter()
          .withImportOption(new DoNotIncludeTests())
          .importPackagesOf(RuleBook.class);

  private final Path scratch;

  RuleBookTest(@TempDir Path scratch) {
    this.scratch = scratch;
  }

  @Test
  void isSortedById() {
    List<String> ids = RuleBook.all().stream().map(rule -> rule.spec().id()).toList();
    assertEquals(ids.stream().sorted().distinct().toList(), ids);
  }

  @Test
  void listsEveryRuleThereIs() {
    Set<String> written =
        CODE.stream()
            .filter(type -> type.isAssignableTo(Rule.class) && !type.isInterface())
            .map(JavaClass::getName)
            .collect(Collectors.toSet());
    Set<String> listed =
        RuleBook.all().stream().map(rule -> rule.getClass().getName()).collect(Collectors.toSet());
    assertEquals(written, listed);
  }

  @Test
  void rulesHoldNoStateAndStayInside() {
    for (JavaClass type : CODE) {
      boolean isRule =
          (type.isAssignableTo(Rule.class) || type.isAssignableTo(SeriesRule.class))
              && !type.isInterface();
      boolean door = DOORS.stream().anyMatch(type::isEquivalentTo);
      assertTrue(
          type.getPackageName().endsWith(".model") // for the other packages of this room
              || door == type.getModifiers().contains(JavaModifier.PUBLIC),
          type.getName());
      assertFalse(
          isRule
              && type.getFields().stream()
                  .anyMatch(field -> !field.getModifiers().contains(JavaModifier.STATIC)),
          type.getName());
    }
  }

  @Test
  void gravityIsThePersonsElseTheRules() throws Exception {
    Path folder = Path.of("src/test/resources/rules/words/long/flags-twenty-six");
    assertEquals(List.of(Severity.WARNING), gravities(Fixture.read(folder, scratch)));
    String own = "[severities]\n'words/long' = 'error'";
    assertEquals(List.of(Severity.ERROR), gravities(Fixture.read(folder, scratch, own)));
  }

  private static List<Severity> gravities(Fixture fixture) {
    return RuleBook.check(fixture.galley()).stream().map(Finding::severity).toList();
  }

  @Test
  void findingsStandInScriptOrderWhateverTheRule() throws Exception {
    SetEpisode episode =
        Fixture.set(
            """
            PANEL

            ILSE (whisper): One two three.

            ISLE: Four.

            PANEL

            ILSE: Five six seven.
            """,
            "[limits]\n'words/long' = 2\n[manners.whisper]\nsize = 0.5\n[voices.Ilse]\nslant = 5");
    List<String> found =
        RuleBook.check(Galley.unplaced(episode)).stream().map(Fixture::print).toList();
    assertEquals(
        List.of(
            "p1-1: legible/small-voice, 8.6 arcmin, limit 13.5",
            "p1-1: words/long, 3 words, limit 2",
            "p1-2: voice/unknown",
            "p2-1: words/long, 3 words, limit 2"),
        found);
  }

  @Test
  void aFindingSaysWhereItIs() throws Exception {
    SetEpisode episode =
        Fixture.set(
            "PANEL\n\nPANEL\n\nILSE: Hush.\n\nILSE: Four too many words.\n",
            "[limits]\n'words/long' = 2");
    Finding finding = RuleBook.check(Galley.unplaced(episode)).get(0);
    assertEquals(7, finding.where().line().orElseThrow());
    assertEquals(2, finding.where().panel().orElseThrow());
    assertEquals(List.of("p2-2"), finding.where().balloons());
  }

  @TestFactory
  Stream<DynamicNode> everyRule() {
    return RuleBook.all().stream()
        .map(
            rule ->
                dynamicContainer(
                    rule.spec().id(),
                    Stream.of(page(rule), fixtures(rule)).flatMap(nodes -> nodes)));
  }

  private Stream<DynamicNode> page(Rule rule) {
    return Stream.of(
        dynamicTest("has a page with every part in order", () -> checkParts(rule.spec().id())),
        dynamicTest("has a page whose setting is what holds anyway", () -> checkSetting(rule)));
  }

  private static String pageOf(String id) throws IOException {
    return Files.readString(Path.of("docs/rules", id + ".md"));
  }

  static void checkParts(String id) throws IOException {
    String page = pageOf(id);
    assertTrue(page.startsWith("# " + id + "\n"), "its title is the id");
    List<Integer> places = PAGE.stream().map(part -> page.indexOf("**" + part + "** ")).toList();
    assertFalse(places.contains(-1), places + " of " + PAGE);
    assertEquals(places.stream().sorted().toList(), places);
  }

  /** The lines of series.toml on a page are read without a doubt and change nothing. */
  private void checkSetting(Rule rule) throws Exception {
    String toml = toml(rule.spec().id());
    checkSetting(rule.spec().id(), rule.spec().severity(), toml);
    for (Path folder : fixtureFolders(rule)) {
      boolean saysItsOwn =
          Files.exists(folder.resolve("series.toml"))
              && Files.readString(folder.resolve("series.toml")).contains("[limits]");
      if (!saysItsOwn) {
        Fixture fixture = Fixture.read(folder, scratch, toml);
        assertEquals(fixture.expectedFindings(), found(rule, fixture), folder.toString());
      }
    }
  }

  static void checkSetting(String id, Severity severity, String toml) {
    ReadStyle read = new StyleReader().read(toml, "series.toml");
    assertEquals(List.of(), read.findings());
    for (Severity other : Severity.values()) {
      assertEquals(severity, read.style().severity(id, other));
    }
    HouseStyle.DEFAULT
        .limits()
        .forEach((known, limit) -> assertEquals(limit, read.style().limit(known)));
  }

  static String toml(String id) throws IOException {
    return pageOf(id)
        .lines()
        .dropWhile(line -> !line.equals("```toml"))
        .skip(1)
        .takeWhile(line -> !line.equals("```"))
        .collect(Collectors.joining("\n"));
  }

  private static List<Path> fixtureFolders(Rule rule) {
    return Fixture.folders(Path.of("src/test/resources/rules", rule.spec().id()));
  }

  private Stream<DynamicNode> fixtures(Rule rule) {
    List<Path> folders = fixtureFolders(rule);
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

  private void run(Rule rule, Path folder) throws Exception {
    Fixture fixture = Fixture.read(folder, scratch);
    assertFalse(fixture.galley().set().balloons().isEmpty(), "nothing was set");
    assertEquals(fixture.expectedFindings(), found(rule, fixture));
    assertEquals(name(folder).startsWith("clean-"), fixture.expectedFindings().isEmpty());
    List<Finding> findings = findings(rule, fixture);
    IntStream.range(0, findings.size())
        .forEach(i -> checkWords(findings.get(i), fixture.expectedWords(i)));
  }

  private static List<String> found(Rule rule, Fixture fixture) {
    return findings(rule, fixture).stream().map(Fixture::print).toList();
  }

  private static List<Finding> findings(Rule rule, Fixture fixture) {
    return RuleBook.check(fixture.galley()).stream()
        .filter(finding -> finding.rule().equals(rule.spec().id()))
        .toList();
  }

  /** Both sentences are plain sentences, and say what the fixture wants said. */
  static void checkWords(Finding finding, List<String> wanted) {
    String said = finding.message() + "\n" + finding.advice();
    wanted.forEach(words -> assertTrue(said.contains(words), said + "\nlacks: " + words));
    for (String sentence : List.of(finding.message(), finding.advice())) {
      assertTrue(sentence.matches("(?s)\\S.*[.?]"), sentence);
      assertFalse(sentence.contains("  ") || sentence.contains("\n"), sentence);
    }
  }

  private static String name(Path folder) {
    return String.valueOf(folder.getFileName());
  }
}
