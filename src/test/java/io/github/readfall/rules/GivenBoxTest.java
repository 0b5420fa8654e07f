package io.github.readfall.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Fix;
import io.github.readfall.base.geom.Box;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.Rule;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is advised for a balloon in a box that its text does not suit. */
class GivenBoxTest {

  private static final List<Rule> RULES =
      List.of(
          Fixture.rule("space/overflow"), Fixture.rule("space/tight"), Fixture.rule("space/slack"));

  private final Path scratch;

  GivenBoxTest(@TempDir Path scratch) {
    this.scratch = scratch;
  }

  private List<Finding> findings(String balloon) throws Exception {
    Files.writeString(
        scratch.resolve("script.txt"),
        "PANEL\n\nILSE: It is counting again, and nobody has touched the wheel since spring.\n");
    Files.writeString(
        scratch.resolve("layout.json"),
        "{\"strip\": {\"widthPx\": 1600, \"heightPx\": 2000},"
            + " \"panels\": [{\"panel\": 1, \"box\": [0, 0, 1600, 2000]}],"
            + " \"balloons\": [{\"id\": \"p1-1\", "
            + balloon
            + "}]}");
    Files.writeString(scratch.resolve("expect.txt"), "");
    Fixture fixture = Fixture.read(scratch, scratch);
    return RULES.stream().flatMap(rule -> rule.check(CheckedStrip.of(fixture.galley()))).toList();
  }

  private static Box mend(Finding finding) {
    return ((Fix.Resize) finding.fix().orElseThrow()).box();
  }

  @ParameterizedTest
  @CsvSource({
    "800, 500, space/overflow",
    "60, 40, space/overflow",
    "900, 640, space/tight",
    "1500, 1000, space/slack"
  })
  void theMendLeavesNothingToFind(int width, int height, String rule) throws Exception {
    List<Finding> before = findings("\"box\": [50, 400, " + width + ", " + height + "]");
    assertEquals(List.of(rule), before.stream().map(Finding::rule).toList());
    assertEquals(new Box(50, 400, width, height), before.get(0).box().orElseThrow());
    Box box = mend(before.get(0));
    assertTrue(new Box(0, 0, 1600, 2000).covers(box), "on the strip: " + box);
    String mended = Stream.of(box.x(), box.y(), box.width(), box.height()).toList().toString();
    assertEquals(List.of(), findings("\"box\": " + mended));
  }

  @Test
  void theMendKeepsTheMiddleWhereThereIsRoom() throws Exception {
    Box box = mend(findings("\"box\": [400, 700, 800, 500]").get(0));
    assertEquals(800, box.centre().x(), 1e-9);
    assertEquals(950, box.centre().y(), 1e-9);
  }

  @Test
  void nothingMovesWhatThePersonPlaced() throws Exception {
    Finding pinned = findings("\"box\": [400, 700, 800, 500], \"pinned\": true").get(0);
    assertTrue(pinned.fix().isEmpty());
  }

  /** Set again at the least size that the advice names, lettering that exists passes. */
  @ParameterizedTest
  @CsvSource({"fontPx, 60", "capitalPx, 44", "capitalPx, 30"})
  void letteringMadeAsLargeAsAdvisedPasses(String key, double px) throws Exception {
    Fixture small = fixture("\"" + key + "\": " + px);
    Finding finding =
        Fixture.rule("legible/size").check(CheckedStrip.of(small.galley())).toList().get(0);
    String em = finding.advice().replaceAll(".*an em of ([0-9.]+) px.*", "$1");
    assertEquals(
        List.of(),
        Fixture.rule("legible/size")
            .check(CheckedStrip.of(fixture("\"fontPx\": " + em).galley()))
            .toList());
    double less = Double.parseDouble(em) - 0.2;
    assertEquals(
        1,
        Fixture.rule("legible/size")
            .check(CheckedStrip.of(fixture("\"fontPx\": " + less).galley()))
            .toList()
            .size());
  }

  private Fixture fixture(String size) throws Exception {
    findings("\"box\": [0, 0, 1500, 1000], " + size);
    return Fixture.read(scratch, scratch);
  }
}
