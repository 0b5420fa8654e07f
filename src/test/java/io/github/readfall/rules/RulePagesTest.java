package io.github.readfall.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.finding.Severity;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.style.ReadStyle;
import io.github.readfall.lettering.style.StyleReader;
import io.github.readfall.rules.RulePage.Part;
import io.github.readfall.rules.model.RuleSpec;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever can be found is explained: the sources are searched for ids. */
class RulePagesTest {

  private static final Path CODE = Path.of("src/main/java/io/github/readfall");

  /** An id in full, e.g. {@code "words/long"}. */
  private static final Pattern WHOLE =
      Pattern.compile(
          "\"((?:art|flow|font|ignored|language|layout|legible|place|plan|script|space|style|voice|words)/[a-z-]+)\"");

  /** The second half of one, as the readers of scripts and layouts say it. */
  private static final Pattern HALF =
      Pattern.compile("\\b(error|warning|note)\\(\\s*\"([a-z]+(?:-[a-z]+)*)\"");

  /** The readers that put the first half before an id themselves, by their package. */
  private static final Map<String, String> FAMILY = Map.of("script", "script/", "strip", "layout/");

  private static Set<String> explained() {
    return Stream.concat(RulePages.rules().stream(), RulePages.others().stream())
        .map(RulePage::id)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void everyIdInTheSourcesIsExplainedAndNoOther() throws IOException {
    Set<String> written = new TreeSet<>(severitiesOfReaders().keySet());
    for (String source : sources(CODE)) {
      Matcher id = WHOLE.matcher(source);
      while (id.find()) {
        written.add(id.group(1));
      }
    }
    written.remove("legible/size-error"); // a limit of legible/size, no rule
    assertTrue(written.size() > 70, "only " + written.size() + " ids were found");
    assertEquals(Set.of(), without(written, explained()), "not explained");
    assertEquals(Set.of(), without(explained(), written), "explained, and found nowhere");
  }

  private static Set<String> without(Set<String> ids, Set<String> others) {
    Set<String> left = new TreeSet<>(ids);
    left.removeAll(others);
    return left;
  }

  @Test
  void aPageSaysHowGraveTheReadersTakeEachFault() throws IOException {
    Map<String, Set<Severity>> taken = severitiesOfReaders();
    for (String family : List.of("script", "layout")) {
      String page = Files.readString(Path.of("docs/rules", family + ".md"));
      taken.forEach(
          (id, severities) -> {
            if (id.startsWith(family)) {
              String row = row(page, id);
              Set<Severity> said =
                  Stream.of(Severity.values())
                      .filter(severity -> row.split("\\|", -1)[2].contains(severity.word()))
                      .collect(Collectors.toSet());
              assertEquals(severities, said, row);
            }
          });
    }
  }

  private static String row(String page, String id) {
    return page.lines().filter(line -> line.startsWith("| `" + id + "` ")).findFirst().orElse("");
  }

  private static Map<String, Set<Severity>> severitiesOfReaders() throws IOException {
    Map<String, Set<Severity>> found = new TreeMap<>();
    for (Map.Entry<String, String> family : FAMILY.entrySet()) {
      for (String source : sources(CODE.resolve(family.getKey()))) {
        Matcher half = HALF.matcher(source);
        while (half.find()) {
          Severity severity = Severity.valueOf(half.group(1).toUpperCase(Locale.ROOT));
          found
              .computeIfAbsent(
                  family.getValue() + half.group(2), id -> EnumSet.noneOf(Severity.class))
              .add(severity);
        }
      }
    }
    return found;
  }

  /** All but the list of severities, which only repeats ids. */
  private static List<String> sources(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(file -> file.toString().endsWith(".java"))
          .filter(file -> !file.endsWith("OtherSeverities.java"))
          .map(RulePagesTest::text)
          .toList();
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new AssertionError(file.toString(), e);
    }
  }

  @Test
  void everyPageInTheFolderIsOneThatIsShown() throws IOException {
    Set<String> families =
        RulePages.others().stream()
            .map(page -> page.id().substring(0, page.id().indexOf('/')))
            .collect(Collectors.toSet());
    Path folder = Path.of("docs/rules");
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String name =
            folder.relativize(file).toString().replace('\\', '/').replaceFirst("\\.md$", "");
        boolean shown = name.contains("/") ? explained().contains(name) : families.contains(name);
        assertTrue(shown, file + " is shown nowhere");
      }
    }
  }

  @Test
  void everyRuleSaysAllAndEveryOtherFindingWhatItMeansAndHowToMendIt() {
    for (RulePage page : RulePages.rules()) {
      assertEquals(List.of(Part.values()), List.copyOf(page.parts().keySet()), page.id());
    }
    for (RulePage page : RulePages.others()) {
      assertEquals(List.of(Part.FINDS, Part.MEND), List.copyOf(page.parts().keySet()), page.id());
    }
    Stream.concat(RulePages.rules().stream(), RulePages.others().stream())
        .flatMap(page -> page.parts().values().stream())
        .forEach(text -> assertFalse(text.isBlank() || text.contains("**"), text));
  }

  /** The code's severity, limit and meaning of the limit are those that the page states. */
  @ParameterizedTest
  @EnumSource
  void thePageOfARuleStatesWhatTheCodeHas(RuleSpec rule) {
    String setting = RulePages.of(rule.id()).orElseThrow().part(Part.SET).orElseThrow();
    String limit = "\"" + rule.id() + "\" = " + limitText(rule) + "\n";
    assertEquals(rule.limit().isPresent(), setting.contains("[limits]\n" + limit), setting);
    String severity = "\"" + rule.id() + "\" = \"" + rule.severity().word() + "\"\n";
    assertTrue(setting.contains("[severities]\n" + severity), setting);
    String plain = setting.replaceAll("\\s+", " ");
    assertEquals(rule.limit().isPresent(), !rule.limitMeaning().isEmpty());
    assertTrue(
        plain.contains(rule.limitMeaning().replaceFirst("^The limit", "the limit")),
        plain + " lacks " + rule.limitMeaning());
  }

  private static String limitText(RuleSpec rule) {
    return rule.limit().isPresent()
        ? BigDecimal.valueOf(rule.limit().getAsDouble()).stripTrailingZeros().toPlainString()
        : "";
  }

  @Test
  void everyRuleHasASpecificationAndEverySpecificationARule() {
    assertEquals(
        Stream.of(RuleSpec.values()).map(RuleSpec::id).toList(),
        RulePages.rules().stream().map(RulePage::id).toList());
  }

  /** The most severe one that the page of a family names is the one that the code has. */
  @Test
  void thePagesOfFamiliesStateTheSeveritiesOfTheCode() throws IOException {
    List<String> pages = familyPages();
    for (RulePage other : RulePages.others()) {
      String row =
          pages.stream()
              .map(page -> row(page, other.id()))
              .filter(text -> !text.isEmpty())
              .findFirst()
              .orElseThrow(() -> new AssertionError("no page has a row for " + other.id()));
      String cell = row.split("\\|", -1)[2];
      Severity most =
          Stream.of(Severity.values())
              .filter(s -> cell.contains(s.word()))
              .findFirst()
              .orElseThrow();
      assertEquals(most, other.severity(), other.id());
    }
  }

  private static List<String> familyPages() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("docs/rules"))) {
      return files.filter(Files::isRegularFile).map(RulePagesTest::text).toList();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"voice/strayed", "voice/unknown", "script/empty"})
  void whatCountsNothingHasNoLimit(String id) {
    assertEquals(OptionalDouble.empty(), RulePages.of(id).orElseThrow().limit());
  }

  @ParameterizedTest
  @CsvSource({
    "voice/strayd,voice/strayed",
    "word/long,words/long",
    "WORDS/LONG,words/long",
    "unknown-speaker,script/unknown-speaker",
    "long,words/long",
    "readfall,",
    "'',"
  })
  void theNearestIdIsGuessed(String typed, String near) {
    assertEquals(Optional.ofNullable(near), RulePages.nearest(typed));
  }

  /** The settings at the end of a family's page are understood and change nothing. */
  @Test
  void everyFamilysSettingIsWhatHoldsAnyway() throws IOException {
    Set<String> set = new TreeSet<>();
    for (String family :
        List.of("art", "font", "language", "layout", "place", "plan", "script", "style")) {
      ReadStyle read = new StyleReader().read(RuleBookTest.toml(family), "series.toml");
      assertEquals(List.of(), read.findings());
      set.addAll(read.style().severities().keySet());
      for (RulePage page : RulePages.others()) {
        assertEquals(page.severity(), read.style().severity(page.id(), page.severity()), page.id());
      }
    }
    assertEquals(8, set.size());
    assertEquals(Map.of(), HouseStyle.DEFAULT.severities());
  }

  /** Whatever can be found can be made graver or less grave. */
  @Test
  void everyIdCanBeSet() {
    String toml =
        explained().stream()
            .map(id -> "'" + id + "' = 'note'")
            .collect(Collectors.joining("\n", "[severities]\n", "\n"));
    assertEquals(List.of(), new StyleReader().read(toml, "series.toml").findings());
  }
}
