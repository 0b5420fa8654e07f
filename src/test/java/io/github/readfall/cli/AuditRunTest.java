package io.github.readfall.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.draw.Drawing;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Lettering audited from the command line by its measured height alone. */
class AuditRunTest {

  /** A command that audits and does nothing else. */
  @Command(name = "audit")
  static final class Auditing implements Callable<Integer> {
    @Mixin private AuditOptions options = new AuditOptions();

    @Parameters(arity = "0..1")
    private Optional<Path> path = Optional.empty();

    private Optional<AuditRun> run = Optional.empty();

    @Override
    public Integer call() throws CannotProceed {
      run = Optional.of(AuditRun.of(options, path));
      return 0;
    }
  }

  private static AuditRun run(String... args) throws CannotProceed {
    Auditing command = new Auditing();
    CommandLine line = new CommandLine(command);
    line.parseArgs(args);
    command.call();
    return command.run.orElseThrow();
  }

  private static String printed(AuditRun run, boolean json) {
    StringWriter out = new StringWriter();
    PrintWriter writer = new PrintWriter(out);
    run.print(writer, json);
    writer.flush();
    return out.toString();
  }

  private static JsonNode report(String... args) throws CannotProceed {
    return JsonMapper.builder().build().readTree(printed(run(args), true));
  }

  private static JsonNode row(JsonNode report, double widthDp, double distanceMm) {
    return report
        .at("/audit/0/rows")
        .valueStream()
        .filter(row -> row.path("widthDp").asDouble() == widthDp)
        .filter(row -> row.path("distanceMm").asDouble() == distanceMm)
        .findFirst()
        .orElseThrow();
  }

  /**
   * The table of capital heights: 16, 20 and 22 minutes of arc (ISO 9241-3 and U.S. NRC NUREG-0700
   * Rev. 2, 1.3.1-4) at 362 mm (Bababekova et al. 2011), rounded to a tenth of a pixel.
   */
  @ParameterizedTest
  @CsvFileSource(resources = "/viewing/pixels.txt", delimiter = '|')
  void aHeightOfTheTableHasItsAngle(int stripPx, int phoneDp, double arcmin, String heightPx)
      throws Exception {
    JsonNode report = report("--capital-px", heightPx.strip(), "--strip-width", "" + stripPx);
    JsonNode row = row(report, phoneDp, 362);
    double perPx = arcmin / Double.parseDouble(heightPx.strip());
    assertEquals(arcmin, row.path("arcmin").asDouble(), 0.1 * perPx);
    if (arcmin == 16) {
      assertEquals(Double.parseDouble(heightPx.strip()), row.path("leastPx").asDouble(), 0.1);
    }
    if (arcmin == 20) {
      assertEquals(Double.parseDouble(heightPx.strip()), row.path("betterPx").asDouble(), 0.1);
    }
  }

  /**
   * x-height 12′ (Legge and Bigelow 2011); ideograph 12′ × 1.54 = 18.5′ (Zhang et al. 2020). A
   * fiftieth less is in the table but no finding; below three quarters it is an error.
   */
  @ParameterizedTest
  @CsvSource({
    "--x-height-px, 26, false, ERROR",
    "--x-height-px, 26.6, false, WARNING",
    "--x-height-px, 34.6, false, WARNING",
    "--x-height-px, 35.3, false, ''",
    "--x-height-px, 35.5, true, ''",
    "--ideograph-px, 40.4, false, ERROR",
    "--ideograph-px, 41.4, false, WARNING",
    "--ideograph-px, 53.4, false, WARNING",
    "--ideograph-px, 54.4, false, ''",
    "--ideograph-px, 54.6, true, ''",
    "--capital-px, 34.6, false, ERROR",
    "--capital-px, 35.4, false, WARNING",
    "--capital-px, 46.2, false, WARNING",
    "--capital-px, 47.1, false, ''",
    "--capital-px, 47.3, true, ''"
  })
  void theLeastHeightIsThatOfItsKind(String option, String px, boolean passes, String severity)
      throws Exception {
    JsonNode report = report(option, px);
    assertEquals(1600, report.at("/audit/0/stripWidthPx").asDouble());
    assertEquals(passes, row(report, 360, 362).path("passes").asBoolean());
    String found =
        run(option, px).findings().stream()
            .map(finding -> finding.severity().name())
            .collect(Collectors.joining());
    assertEquals(severity, found);
  }

  @Test
  void theNarrowestPhoneIsWhatAFindingSpeaksOf() throws Exception {
    AuditRun run = run("--capital-px", "44");
    assertEquals(1, run.findings().size());
    String sentence = run.findings().get(0).message() + " " + run.findings().get(0).advice();
    assertEquals(
        "A capital of 44.0 px is seen at 14.9 minutes of arc on the phone \"small\", less than"
            + " 16.0. Letter it 47.2 px high or more; 59.0 px is read with ease.",
        sentence);
    JsonNode report = report("--capital-px", "44");
    assertTrue(row(report, 360, 292).path("passes").asBoolean(), "nearer, it can be read");
    assertTrue(row(report, 430, 362).path("passes").asBoolean(), "on a wide phone it can be read");
  }

  @Test
  void aSeriesBringsItsStripItsPhonesAndItsLimit(@TempDir Path series) throws Exception {
    Files.writeString(
        series.resolve("series.toml"),
        """
        [strip]
        width = 800
        [phones.mine]
        width-dp = 400
        height-dp = 800
        distance-mm = 300
        [limits]
        "legible/size" = 18
        """);
    Files.createDirectory(series.resolve("ep01"));
    Files.writeString(series.resolve("ep01/script.txt"), "PANEL\n\nILSE: Hush.\n");
    for (String path : new String[] {"", "ep01", "ep01/script.txt"}) {
      JsonNode report = report("--capital-px", "20", series.resolve(path).toString());
      assertEquals(800, report.at("/audit/0/stripWidthPx").asDouble(), path);
      assertEquals(18, report.at("/audit/0/leastArcmin").asDouble(), path);
      JsonNode own = report.at("/audit/0/rows/0");
      assertEquals("mine", own.path("phone").asString(), path);
      assertEquals(10, own.path("dp").asDouble(), path);
      assertFalse(own.path("leastPx").isMissingNode());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "--capital-px, 0",
    "--capital-px, -3",
    "--x-height-px, NaN",
    "--strip-width, 0",
    "--ideograph-px, 1e9"
  })
  void whatIsNoLengthIsRefusedInASentence(String option, String value) {
    String[] args =
        option.equals("--strip-width")
            ? new String[] {"--capital-px", "40", option, value}
            : new String[] {option, value};
    try {
      run(args);
    } catch (CannotProceed e) {
      assertTrue(String.valueOf(e.getMessage()).startsWith(option + " is a "), e.getMessage());
      return;
    }
    throw new AssertionError(option + " " + value + " was taken");
  }

  @Test
  void aPathWithNothingThereIsRefused() {
    try {
      run("--capital-px", "40", "no/such/place");
    } catch (CannotProceed e) {
      assertTrue(String.valueOf(e.getMessage()).contains("There is nothing at"), e.getMessage());
      return;
    }
    throw new AssertionError("taken");
  }

  @Test
  void theTableSaysWhatPassesAndWhatNobodyShouldForget() throws Exception {
    String table = printed(run("--capital-px", "44", "--ideograph-px", "70"), false);
    assertTrue(table.contains("A capital of 44.0 px on a strip 1600 px wide"), table);
    assertTrue(table.contains("An ideograph of 70.0 px"), table);
    assertTrue(
        table
            .lines()
            .anyMatch(line -> line.matches(" +360 dp +9\\.9 +1\\.57 .*14\\.9′ too small.*")),
        table);
    assertTrue(table.contains("real screens differ by some per cent"), table);
    assertTrue(table.contains("eye specialist"), table);
    assertTrue(
        table
            .lines()
            .filter(line -> !line.contains("warning"))
            .allMatch(line -> line.length() <= 110),
        table);
  }

  @ParameterizedTest
  @CsvSource({"--capital-px, 44", "--x-height-px, 30", "--ideograph-px, 60", "--capital-px, 400"})
  void thePictureIsAsHighAsThePhone(String option, String px) throws Exception {
    Drawing image = run(option, px).picture();
    assertEquals(1600, image.widthPx());
    assertTrue(image.heightPx() >= 2844, "height " + image.heightPx());
    assertTrue(px.equals("400") || image.heightPx() <= 2845, "height " + image.heightPx());
  }
}
