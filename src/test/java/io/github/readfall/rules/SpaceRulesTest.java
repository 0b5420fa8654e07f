package io.github.readfall.rules;

import static java.util.stream.Collectors.joining;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.Endurance;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.strip.Cuts;
import io.github.readfall.strip.Extra;
import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.galley.Compositor;
import io.github.readfall.strip.galley.Galley;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rules about room, where a fixture cannot say it. */
class SpaceRulesTest {

  private static final String BOXES = "[voices.default]\nshape = 'rounded-box'\n";

  private static SetEpisode episode(int balloons, String toml) throws Exception {
    String cues =
        IntStream.range(0, balloons)
            .mapToObj(i -> "ILSE: It is counting.")
            .collect(joining("\n\n"));
    return Fixture.set("PANEL\n\n" + cues + "\n", toml);
  }

  private static Galley strip(SetEpisode set, List<Box> boxes, double heightPx, Cuts cuts) {
    List<LaidBalloon> laid = new ArrayList<>();
    for (int i = 0; i < boxes.size(); i++) {
      laid.add(laid(set.balloons().get(i).cue().id(), boxes.get(i)));
    }
    PanelBox panel = new PanelBox(1, new Box(0, 0, 1600, heightPx));
    return Compositor.compose(
        set, Layout.of(1600, heightPx, List.of(panel)).withBalloons(laid), cuts);
  }

  private static LaidBalloon laid(String id, Box box) {
    return new LaidBalloon(
        id,
        Optional.empty(),
        Optional.empty(),
        Optional.of(box),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        List.of(),
        false,
        false,
        Extra.NONE);
  }

  /** From far apart to one on the other, a pair is never a matter of two rules. */
  @ParameterizedTest
  @CsvSource({
    "27, ''",
    "26, space/crowded",
    "4.6, space/crowded",
    "4.3, space/tangent",
    "0, space/tangent",
    "-0.05, space/tangent",
    "-0.2, space/overlap",
    "-12, space/overlap",
    "-100, space/overlap"
  })
  void aPairIsJudgedByOneRule(double gapPx, String rule) throws Exception {
    SetEpisode set = episode(2, BOXES);
    Box size = set.balloons().get(0).box();
    Box first = new Box(200, 300, size.width(), size.height());
    Box second = new Box(first.right() + gapPx, 300, size.width(), size.height());
    List<Finding> found = RuleBook.check(strip(set, List.of(first, second), 2000, Cuts.NONE));
    assertEquals(
        rule,
        found.stream().map(Finding::rule).filter(id -> id.startsWith("space/")).collect(joining()));
  }

  /** 900 px wide slices of at most 2000 px are 3555.6 px of a strip 1600 px wide. */
  @ParameterizedTest
  @CsvSource({"3500, true", "3600, false"})
  void aSliceMaySpareAPanelWithinItsHeight(double gutterPx, boolean flagged) throws Exception {
    SetEpisode set = Fixture.set("PANEL\n\nILSE: Hush.\n\nPANEL\n\nILSE: Hush.\n", "");
    List<PanelBox> panels =
        List.of(
            new PanelBox(1, new Box(0, 0, 1600, gutterPx)),
            new PanelBox(2, new Box(0, gutterPx + 20, 1600, 2000)));
    Layout layout =
        Layout.of(1600, gutterPx + 2020, panels)
            .withBalloons(
                List.of(
                    laid("p1-1", new Box(400, 300, 200, 100)),
                    laid("p2-1", new Box(400, gutterPx + 1800, 200, 100))));
    Cuts cuts = new Cuts(List.of(), false, List.of(3550.0 + (gutterPx > 3555 ? 0 : 5)));
    List<Finding> found =
        Fixture.rule("space/cut")
            .check(CheckedStrip.of(Compositor.compose(set, layout, cuts)))
            .toList();
    assertEquals(flagged ? 1 : 0, found.size());
    assertTrue(found.stream().allMatch(finding -> finding.severity() == Severity.WARNING));
    assertTrue(found.stream().allMatch(finding -> finding.fix().isEmpty()), "slices are planned");
  }

  @Test
  void aCutThroughABalloonIsGraverThanOneThroughAPanel() throws Exception {
    SetEpisode set = episode(1, "");
    Galley galley =
        strip(
            set,
            List.of(new Box(600, 950, 200, 100)),
            2000,
            new Cuts(List.of(1000.0), true, List.of()));
    assertEquals(
        List.of(Severity.ERROR),
        Fixture.rule("space/cut").check(CheckedStrip.of(galley)).map(Finding::severity).toList());
  }

  /** Three columns, 20 px between any two: 1 000 pairs side by side, 1 497 one over the other. */
  @Test
  void manyBalloonsAreJudgedInLittleTime() throws Exception {
    int rows = Endurance.rounds(200, 500);
    SetEpisode set = episode(3 * rows, BOXES);
    Box size = set.balloons().get(0).box();
    List<Box> boxes = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < 3; column++) {
        double x = 80 + column * (size.width() + 20);
        boxes.add(new Box(x, 100 + row * (size.height() + 20), size.width(), size.height()));
      }
    }
    Galley galley = strip(set, boxes, 200_000, Cuts.NONE);
    List<Rule> rules =
        RuleBook.all().stream()
            .filter(rule -> rule.spec().id().matches("space/.*|flow/tail.*"))
            .toList();
    assertTimeout(
        Duration.ofMillis(60L * rows),
        () ->
            assertEquals(
                2L * rows + 3L * (rows - 1), // beside and above each other
                rules.stream()
                    .flatMap(rule -> rule.check(CheckedStrip.of(galley)))
                    .filter(finding -> finding.rule().equals("space/crowded"))
                    .count()));
  }
}
