package io.github.readfall.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Whatever series.toml asks for, the program answers in words and sets what can be set. */
class BadStyleTest {

  private static final Duration LONG_ENOUGH = Duration.ofSeconds(20);

  private static final String SCRIPT =
      """
      Language: en
      Cast: Ilse

      PANEL 1
      The mill.

      CAPTION: Nobody had turned the wheel since spring.
      ILSE: It is *counting* again, and nobody / told it to.
      ILSE (whisper): Incomprehensibly.
      ILSE (shout): Who had my water?
      ILSE (thought): Ah.
      ILSE (electronic): Testing.
      ILSE (wavy): Here.
      ILSE (joined): And here.
      SFX: KRRANK
      """;

  private final Path series;

  BadStyleTest(@TempDir Path folder) throws IOException {
    this.series = folder;
    Files.createDirectory(folder.resolve("ep01"));
    Files.writeString(folder.resolve("ep01/script.txt"), SCRIPT);
  }

  @TestFactory
  Stream<DynamicTest> oddValuesAreSetOrNamed() {
    Map<String, String> styles = new TreeMap<>();
    for (String width : List.of("1", "10", "100", "200", "100000", "0", "-5", "1e308", "nan")) {
      styles.put("strip width " + width, "[strip]\nwidth = " + width);
    }
    for (String margin : List.of("0", "799", "800", "801", "5000", "-1")) {
      styles.put("safe margin " + margin, "[strip]\nsafe-margin = " + margin);
    }
    for (String size : List.of("0.01", "0.1", "5.0", "50.0", "50", "0.0", "-1.0", "inf", "nan")) {
      styles.put("size " + size, "[voices.ILSE]\nsize = " + size);
      styles.put("whisper size " + size, "[manners.whisper]\nsize = " + size);
    }
    for (String margin : List.of("0", "0.0", "100", "100.0", "1000000.0", "-1.0")) {
      styles.put("margin " + margin, "[lettering]\nmargin = " + margin);
    }
    for (String leading : List.of("0", "0.0", "0.01", "0.1", "100.0", "-1.15")) {
      styles.put("leading " + leading, "[lettering]\nleading = " + leading);
    }
    for (String tracking : List.of("-1.0", "-0.5", "-0.05", "0.5", "10.0")) {
      styles.put("tracking " + tracking, "[lettering]\ntracking = " + tracking);
    }
    for (String aspects : List.of("2.6 2.6", "1.0 1.0", "2.6 1.0", "0.001 0.002", "900.0 1000.0")) {
      String[] range = aspects.split(" ", -1);
      styles.put(
          "aspects " + aspects,
          "[lettering]\nmin-aspect = " + range[0] + "\nmax-aspect = " + range[1]);
    }
    for (String arcmin : List.of("0.1", "1.0", "600.0", "10000.0", "0", "-20.0")) {
      styles.put("size " + arcmin, "[lettering]\nreading-size = " + arcmin);
    }
    for (String slant : List.of("-45", "45", "89", "90", "360", "nan")) {
      styles.put("slant " + slant, "[voices.ILSE]\nslant = " + slant);
    }
    for (String phone : List.of("0", "1", "100000", "-360")) {
      styles.put("phone width " + phone, "[phones.odd]\nwidth-dp = " + phone);
      styles.put("phone distance " + phone, "[phones.odd]\ndistance-mm = " + phone);
    }
    styles.put("a face that is not there", "[voices.ILSE]\nface = \"fonts/None.ttf\"");
    styles.put("a face of no name", "[voices.ILSE]\nface = \"\"");
    styles.put("a face outside", "[voices.ILSE]\nface = \"../../../etc/passwd\"");
    styles.put("empty manner", "[manners.\"\"]\nsize = 0.5");
    styles.put("manner without keys", "[manners.whisper]\n[manners.shout]");
    styles.put("empty voice", "[voices.\"\"]\nsize = 0.5");
    styles.put(
        "every shape", "[voices.ILSE]\nshape = \"none\"\n[manners.caption]\nshape = \"none\"");
    styles.put("weights", "[voices.ILSE]\nweight = 100\n[manners.shout]\nweight = 900");
    styles.put("weight 0", "[voices.ILSE]\nweight = 0");
    styles.put("keyword taken twice", "[keywords]\npanel = \"X\"\nscene = \"X\"");
    styles.put("keyword empty", "[keywords]\npanel = \"\"");
    styles.put("keyword manner to nothing", "[keywords.manners]\nmutters = \"\"");
    styles.put("limits", "[limits]\n\"words/long\" = 0\n\"legible/size\" = 1e9\n\"no/such\" = 1");
    styles.put("severities", "[severities]\n\"words/long\" = \"grave\"\n\"no/such\" = \"note\"");
    styles.put("200 voices", voices(200));
    styles.put("not TOML", "this is = = not TOML [[[");
    styles.put("a table cut off", "[strip\nwidth = 3");
    styles.put("a text cut off", "[voices.ILSE]\nface = \"fonts");
    styles.put("tables where values stand", "[strip.width]\nx = 1\n[voices]\nILSE = 3");
    styles.put("lists where values stand", "strip = [1, 2]\nvoices = []\n[[phones]]\nwidth-dp = 3");
    styles.put("empty", "");
    styles.put("nothing but a zero byte", "\0");
    styles.put("deep", "a = " + "[".repeat(2_000) + "]".repeat(2_000));
    styles.put("a number without end", "[strip]\nwidth = " + "9".repeat(10_000));
    styles.put("one key a thousand times", "[strip]\n" + "width = 1600\n".repeat(1_000));
    return styles.entrySet().stream()
        .map(style -> dynamicTest(style.getKey(), () -> fits(style.getValue())));
  }

  @Test
  void aFaceThatIsNotThereIsNamedAndTheDefaultStandsIn() {
    JsonNode report = fits("[voices.ILSE]\nface = \"fonts/None.ttf\"");
    assertTrue(rules(report).contains("voice/face-missing"), rules(report).toString());
    assertEquals(9, report.path("balloons").size());
  }

  @Test
  void aBrokenFileIsNamedWithItsLineAndTheRestOfTheEpisodeIsSet() {
    JsonNode report = fits("[strip]\nwidth = 1200\n\n[voices.ILSE\nslant = 3\n");
    JsonNode finding = report.path("findings").path(0);
    assertEquals("series.toml", finding.path("file").asString());
    assertEquals(4, finding.path("line").asInt());
    assertEquals(9, report.path("balloons").size());
  }

  @Test
  void aFolderInItsPlaceAndBytesThatAreNoTextAreRefused() throws IOException {
    Path toml = series.resolve("series.toml");
    Files.createDirectory(toml);
    Ran folder = Ran.of("fit", series);
    assertTrue(folder.isRefusedInOneSentence(), folder.toString());
    Files.delete(toml);
    Files.write(toml, "fill = \"\u00E9\"".getBytes(StandardCharsets.ISO_8859_1));
    Ran latin1 = Ran.of("fit", series);
    assertTrue(latin1.isRefusedInOneSentence(), latin1.toString());
    assertTrue(latin1.err().contains("series.toml"), latin1.err());
  }

  private static String voices(int count) {
    return IntStream.range(0, count)
        .mapToObj(i -> "[voices.V" + i + "]\nsize = 0.9\nslant = " + i % 40 + "\n")
        .collect(Collectors.joining());
  }

  private JsonNode fits(String style) {
    return assertTimeoutPreemptively(
        LONG_ENOUGH,
        () -> {
          Files.writeString(series.resolve("series.toml"), style);
          Ran ran = Ran.of("fit", series.resolve("ep01"), "--json");
          assertTrue(ran.status() <= 1, ran.err());
          assertEquals("", ran.err());
          JsonNode report = JsonMapper.builder().build().readTree(ran.out());
          report.path("findings").forEach(BadStyleTest::isPlain);
          return report;
        });
  }

  private static void isPlain(JsonNode finding) {
    String message = finding.path("message").asString();
    assertTrue(message.endsWith(".") && !message.contains("Exception"), message);
    assertTrue(message.length() < 500, "a message of " + message.length() + " letters");
  }

  private static List<String> rules(JsonNode report) {
    return report.path("findings").valueStream().map(f -> f.path("rule").asString()).toList();
  }
}
