package io.github.readfall.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Fix;
import io.github.readfall.base.geom.XY;
import io.github.readfall.plan.order.ReadingOrder;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.strip.Cuts;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the rules of flow offer as a mend mends what they found, and breaks nothing. */
class FlowMendsTest {

  private final Path scratch;

  FlowMendsTest(@TempDir Path scratch) {
    this.scratch = scratch;
  }

  @TestFactory
  Stream<DynamicTest> movesMendWhatTheFixturesShow() {
    return Stream.of(
            Fixture.rule("flow/inverted"),
            Fixture.rule("flow/text-before-picture"),
            Fixture.rule("flow/wrong-panel"))
        .flatMap(
            rule ->
                Fixture.folders(Path.of("src/test/resources/rules", rule.spec().id())).stream()
                    .map(
                        folder ->
                            DynamicTest.dynamicTest(
                                rule.spec().id() + folder, () -> mend(rule, folder))));
  }

  private void mend(Rule rule, Path folder) throws Exception {
    Galley galley = Fixture.read(folder, scratch).galley();
    List<Finding> findings = rule.check(CheckedStrip.of(galley)).toList();
    Galley mended = mended(galley, findings);
    long left = findings.stream().filter(finding -> finding.fix().isEmpty()).count();
    assertEquals(left, rule.check(CheckedStrip.of(mended)).count(), "moved all that can be moved");
    assertTrue(inversions(mended) <= inversions(galley));
  }

  /** Eight balloons thrown into a panel: what is moved is in order, and lies on nothing. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void movesPutAPanelInOrder(int seed) throws Exception {
    Galley galley = thrown(seed);
    List<Finding> findings = Fixture.rule("flow/inverted").check(CheckedStrip.of(galley)).toList();
    Galley mended = mended(galley, findings);
    long moved = findings.stream().filter(finding -> finding.fix().isPresent()).count();
    assertTrue(moved > 0, "none of " + findings.size());
    findings.stream().flatMap(f -> f.fix().stream()).forEach(move -> checkPlace(move, mended));
    assertTrue(
        Fixture.rule("flow/inverted").check(CheckedStrip.of(mended)).count()
            <= findings.size() - moved);
  }

  @Test
  void mostBalloonsOutOfOrderCanBeMoved() throws Exception {
    List<Finding> findings = new ArrayList<>();
    for (int seed = 1; seed <= 12; seed++) {
      Fixture.rule("flow/inverted").check(CheckedStrip.of(thrown(seed))).forEach(findings::add);
    }
    long moved = findings.stream().filter(finding -> finding.fix().isPresent()).count();
    assertTrue(moved >= 0.75 * findings.size(), moved + " of " + findings.size());
  }

  private static void checkPlace(Fix mend, Galley mended) {
    PlacedBalloon moved = balloon(mended, ((Fix.Move) mend).balloon());
    assertTrue(mended.panels().get(0).box().covers(moved.box()));
    assertTrue(
        mended.balloons().stream()
            .filter(other -> !other.id().equals(moved.id()))
            .noneMatch(other -> other.box().meets(moved.box())));
  }

  private static Galley thrown(int seed) throws Exception {
    SplittableRandom random = new SplittableRandom(seed);
    String script = "PANEL\n\n" + "ILSE: Hush.\n\nWOUTER: Hush.\n\n".repeat(4);
    List<Integer> rows = IntStream.range(0, 8).boxed().collect(Collectors.toList());
    Collections.shuffle(rows, new Random(seed));
    String balloons =
        IntStream.range(0, 8)
            .mapToObj(
                i ->
                    String.format(
                        Locale.ROOT,
                        "{\"id\": \"p1-%d\", \"box\": [%d, %d, 378, 152]}",
                        i + 1,
                        100 + random.nextInt(1000),
                        100 + 700 * rows.get(i)))
            .collect(Collectors.joining(", "));
    return Fixture.galley(
        Fixture.set(script, Fixture.LETTERING),
        "{\"readfall-layout\": 1, \"strip\": {\"widthPx\": 1600, \"heightPx\": 6000}, \"panels\":"
            + " [{\"panel\": 1, \"box\": [0, 0, 1600, 5900]}], \"balloons\": ["
            + balloons
            + "]}");
  }

  private static long inversions(Galley galley) {
    return ReadingOrder.of(galley).kendall().inversions();
  }

  private static PlacedBalloon balloon(Galley galley, String id) {
    return galley.balloons().stream().filter(b -> b.id().equals(id)).findFirst().orElseThrow();
  }

  private static Galley mended(Galley galley, List<Finding> findings) {
    List<PlacedBalloon> balloons =
        galley.balloons().stream().map(balloon -> moved(balloon, findings)).toList();
    List<PanelBox> panels = galley.panels();
    return new Galley(
        galley.set(),
        galley.widthPx(),
        galley.heightPx(),
        panels,
        balloons,
        galley.keepClear(),
        galley.mouths(),
        Cuts.NONE);
  }

  private static PlacedBalloon moved(PlacedBalloon balloon, List<Finding> findings) {
    for (Finding finding : findings) {
      if (finding.fix().orElse(null) instanceof Fix.Move move
          && move.balloon().equals(balloon.id())) {
        XY at =
            balloon.at().plus(move.to().x() - balloon.box().x(), move.to().y() - balloon.box().y());
        return PlacedBalloon.of(
            balloon.set(), at, balloon.tails(), balloon.pinned(), balloon.bleed());
      }
    }
    return balloon;
  }
}
