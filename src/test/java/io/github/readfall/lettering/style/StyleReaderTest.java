package io.github.readfall.lettering.style;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.Endurance;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class StyleReaderTest {

  private static final Path FAULTS = Path.of("src/test/resources/style/faults.txt");

  /** For every key a value that is not the built-in one. */
  private static final Map<String, String> OTHER =
      Map.ofEntries(
          Map.entry("strip.width", "800"),
          Map.entry("strip.page-height", "2000"),
          Map.entry("strip.dpi", "300.0"),
          Map.entry("strip.safe-margin", "0"),
          Map.entry("strip.reads", "'rtl'"),
          Map.entry("phones.width-dp", "393"),
          Map.entry("phones.height-dp", "852.5"),
          Map.entry("phones.distance-mm", "300"),
          Map.entry("lettering.reading-size", "'comfortable'"),
          Map.entry("lettering.squareness", "3"),
          Map.entry("lettering.typographic", "false"),
          Map.entry("lettering.dashes", "'double-hyphen'"),
          Map.entry("lettering.margin", "0.5"),
          Map.entry("lettering.leading", "1.2"),
          Map.entry("lettering.tracking", "-0.01"),
          Map.entry("lettering.min-aspect", "2"),
          Map.entry("lettering.max-aspect", "1.5"),
          Map.entry("voices.face", "'fonts/Ilse.otf'"),
          Map.entry("voices.weight", "700"),
          Map.entry("voices.italic", "true"),
          Map.entry("voices.slant", "-45"),
          Map.entry("voices.size", "1.1"),
          Map.entry("voices.capitals", "false"),
          Map.entry("voices.fill", "'#eef'"),
          Map.entry("voices.text", "'#000000'"),
          Map.entry("voices.line", "'#A0B0C0'"),
          Map.entry("voices.shape", "'rounded-box'"),
          Map.entry("voices.line-style", "'dashed'"),
          Map.entry("voices.tracking", "0.02"),
          Map.entry("manners.face", "'Bangers'"),
          Map.entry("manners.weight", "300"),
          Map.entry("manners.italic", "true"),
          Map.entry("manners.slant", "45"),
          Map.entry("manners.size", "0.8"),
          Map.entry("manners.capitals", "true"),
          Map.entry("manners.fill", "'#fafafa'"),
          Map.entry("manners.text", "'#222222'"),
          Map.entry("manners.line", "'#333333'"),
          Map.entry("manners.shape", "'none'"),
          Map.entry("manners.line-style", "'solid'"),
          Map.entry("manners.tracking", "0.1"),
          Map.entry("languages.face", "'fonts/Own.otf'"),
          Map.entry("languages.size", "1.1"),
          Map.entry("languages.leading", "0.9"),
          Map.entry("languages.reads", "'rtl'"),
          Map.entry("delivery.width", "720"),
          Map.entry("delivery.max-slice-height", "1280"),
          Map.entry("delivery.max-slice-bytes", "5000000000"),
          Map.entry("delivery.format", "\"jpeg\""),
          Map.entry("delivery.quality", "80"),
          Map.entry("delivery.max-episode-height", "100000"),
          Map.entry("keywords.panel", "'VIÑETA'"),
          Map.entry("keywords.scene", "'ESCENA'"),
          Map.entry("keywords.caption", "'TEXTO'"),
          Map.entry("keywords.sfx", "'EFECTO'"));

  private record Case(String toml, List<String> expected) {
    static Case of(String text) {
      Map<Boolean, List<String>> lines =
          text.lines().collect(Collectors.partitioningBy(line -> line.startsWith("#! ")));
      return new Case(
          String.join("\n", lines.getOrDefault(false, List.of())),
          lines.getOrDefault(true, List.of()).stream().map(line -> line.substring(3)).toList());
    }
  }

  static Stream<Case> faults() throws IOException {
    return Arrays.stream(Files.readString(FAULTS).split("(?m)^----.*\n", -1)).map(Case::of);
  }

  @ParameterizedTest
  @MethodSource("faults")
  void eachFaultIsNamedWhereItIsWithItsMend(Case faulty) {
    List<Finding> findings = new StyleReader().read(faulty.toml(), "series.toml").findings();
    assertEquals(
        String.join("\n", faulty.expected()),
        findings.stream().map(StyleReaderTest::shown).collect(Collectors.joining("\n")));
    assertTrue(findings.stream().allMatch(f -> f.severity() == Severity.WARNING));
    assertTrue(findings.stream().allMatch(f -> f.where().file().equals("series.toml")));
  }

  @Test
  void findingsAreTheSameInATurkishLocale() throws IOException {
    Locale before = Locale.getDefault();
    Locale.setDefault(Locale.forLanguageTag("tr-TR-u-nu-arab"));
    try {
      faults().forEach(this::eachFaultIsNamedWhereItIsWithItsMend);
      ReadStyle read = new StyleReader().read(SeriesTemplate.seriesToml(), "series.toml");
      assertEquals(new ReadStyle(HouseStyle.DEFAULT, List.of()), read);
      assertTrue(
          new StyleReader().read("[voices.ILSE]\nsize=1", "").style().voice("ilse").isPresent());
    } finally {
      Locale.setDefault(before);
    }
  }

  private static String shown(Finding f) {
    return f.where().line().orElse(0)
        + ":"
        + f.where().column().orElse(0)
        + " "
        + f.rule()
        + " | "
        + f.message()
        + " | "
        + f.advice();
  }

  private static String header(Section<?> section) {
    String own = section.equals(Sections.LANGUAGES) ? ".pt" : ".whisper";
    return "[" + section.name() + (section.many() ? own : "") + "]";
  }

  private static String toml(Section<?> section, Key<?> key, String value) {
    return header(section) + "\n" + key.name() + " = " + value + "\n";
  }

  static Stream<Object[]> keys() {
    return Sections.ALL.stream().flatMap(s -> s.keys().stream().map(key -> new Object[] {s, key}));
  }

  @ParameterizedTest
  @MethodSource("keys")
  void everyKeyIsReadAndItsExampleToo(Section<?> section, Key<?> key) {
    HouseStyle without = new StyleReader().read(header(section), "series.toml").style();
    String other = OTHER.getOrDefault(section.name() + "." + key.name(), "no other value given");
    ReadStyle read = new StyleReader().read(toml(section, key, other), "series.toml");
    assertEquals(List.of(), read.findings());
    assertNotEquals(without, read.style());
    assertEquals(
        List.of(),
        new StyleReader().read(toml(section, key, key.example()), "series.toml").findings());
  }

  @ParameterizedTest
  @MethodSource("keys")
  void ofEveryKeyAUselessValueIsOneFindingAndTheBuiltInStands(Section<?> section, Key<?> key) {
    HouseStyle without = new StyleReader().read(header(section), "series.toml").style();
    for (String useless : List.of("1979-05-27", "[]", "{}", "nan", "-inf", "''", "'?'", "-1e300")) {
      ReadStyle read = new StyleReader().read(toml(section, key, useless), "series.toml");
      boolean text = key.example().startsWith("\"") && key.kind().takes().test("");
      if (useless.equals("'?'")
          && text
          && key.kind().words().isEmpty()
          && read.findings().isEmpty()) {
        continue; // a face or a keyword may be called anything
      }
      assertEquals(1, read.findings().size(), key.name() + " = " + useless);
      Finding finding = read.findings().get(0);
      assertTrue(Set.of("style/wrong-type", "style/impossible").contains(finding.rule()));
      assertEquals(2, finding.where().line().orElse(0));
      assertEquals(without, read.style(), key.name() + " = " + useless);
    }
  }

  @Test
  void whatIsSoundIsReadInSpiteOfFaultsAroundIt() {
    ReadStyle read =
        new StyleReader()
            .read(
                """
                [voices.OLD WOUTER]
                size = 3
                [voices.ILSE]
                slant = 5
                fill = #fff
                weight = 700
                [strip]
                width = 800
                """,
                "series.toml");
    assertEquals(2, read.findings().size());
    assertEquals(800, read.style().strip().widthPx());
    assertEquals(700, read.style().voice("ILSE").orElseThrow().weight().orElseThrow());
    assertEquals(Set.of("default", "ILSE"), read.style().voices().keySet(), "no voice named OLD");
  }

  @Test
  void byteOrderMarkAndWindowsLineEndsDoNotMatter() {
    ReadStyle read =
        new StyleReader().read("\uFEFF[strip]\r\nwidth = 800\r\ndpi = 0\r\n", "series.toml");
    assertEquals(800, read.style().strip().widthPx());
    assertEquals(3, read.findings().get(0).where().line().orElseThrow());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void garbageIsFindingsNeverAnException(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    String signs = "[]{}=\"'.,#\\\n\r\t ab1-é\u0000\uD83D\uDE00\uD800";
    for (int i = 0; i < Endurance.rounds(40, 300); i++) {
      String template = SeriesTemplate.seriesToml().replace("\n#", "\n");
      StringBuilder text = new StringBuilder(i % 2 == 0 ? "" : template.substring(0, 1500));
      for (int j = 0; j < 1 + i / 3; j++) {
        char sign = signs.charAt(random.nextInt(signs.length()));
        text.insert(random.nextInt(text.length() + 1), sign);
      }
      ReadStyle read = new StyleReader().read(text.toString(), "series.toml");
      read.findings().forEach(f -> assertTrue(f.message().endsWith("."), f.message()));
      read.findings().forEach(f -> assertTrue(f.message().indexOf('\n') < 0, f.message()));
    }
  }

  static Stream<String> monsters() {
    SplittableRandom random = new SplittableRandom(9);
    String noise =
        random.ints(60_000, 0, 256).mapToObj(Character::toString).collect(Collectors.joining());
    String keys =
        Stream.iterate(0, i -> i + 1)
            .limit(5_000)
            .map(i -> "k" + i + " = 1\n")
            .collect(Collectors.joining());
    return Stream.of(
        "a = " + "[".repeat(5_000_000),
        "a = " + "[".repeat(60_000),
        "a = " + "{a = ".repeat(12_000),
        "[".repeat(60_000),
        "a" + ".a".repeat(30_000) + " = 1",
        "a = \"\"\"" + "x\n".repeat(30_000),
        "k\n".repeat(30_000),
        "[voices.ILSE]\n" + keys,
        "[limits]\n" + keys,
        "[\n".repeat(60) + "x",
        noise);
  }

  @ParameterizedTest
  @MethodSource("monsters")
  void monstersAreRefusedInAFewSeconds(String toml) {
    ReadStyle read =
        assertTimeoutPreemptively(
            Duration.ofSeconds(10), () -> new StyleReader().read(toml, "series.toml"));
    assertTrue(!read.findings().isEmpty() && read.findings().size() <= 101);
    assertEquals(HouseStyle.DEFAULT.strip(), read.style().strip());
  }

  @Test
  void theKeysMakeAPage() {
    String page = StyleKeys.markdown();
    assertTrue(
        page.contains(
            "| `[strip]` | `width` | a whole number of pixels from 200 to 20000 | `1600` |"
                + " Width of the strip, in pixels. |\n"));
    assertEquals(OTHER.size() + 2, page.lines().count());
  }
}
