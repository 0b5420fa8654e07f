package io.github.readfall.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Fix;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.strip.Cuts;
import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.galley.Compositor;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.json.LayoutReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** What a machine mends is mended, and nothing else is broken by it. */
class MendsTest {

  private static final List<String> RULES =
      List.of(
          "flow/tail-astray",
          "flow/tail-long",
          "space/covers-art",
          "space/crowded",
          "space/cut",
          "space/margin",
          "space/outside",
          "space/overlap",
          "space/tangent");

  private final Path scratch;

  MendsTest(@TempDir Path scratch) {
    this.scratch = scratch;
  }

  @TestFactory
  Stream<DynamicTest> everyMendMends() {
    return RULES.stream()
        .flatMap(id -> Fixture.folders(Path.of("src/test/resources/rules", id)).stream())
        .filter(folder -> folder.getFileName().toString().startsWith("flags-"))
        .map(folder -> DynamicTest.dynamicTest(folder.toString(), () -> check(folder)));
  }

  private void check(Path folder) throws Exception {
    Galley before = Fixture.read(folder, scratch).galley();
    Layout layout =
        new LayoutReader()
            .read(Files.readString(folder.resolve("layout.json")))
            .layout()
            .orElseThrow();
    List<Finding> found = RuleBook.check(before);
    for (Finding finding : found) {
      if (finding.fix().isPresent()) {
        List<Finding> left = RuleBook.check(mended(before, layout, finding.fix().get()));
        assertTrue(
            left.stream().noneMatch(other -> isSame(finding, other)),
            finding.fix() + " leaves " + left);
        assertTrue(left.size() < found.size(), finding.fix() + " gives " + left);
      }
    }
  }

  private static boolean isSame(Finding one, Finding other) {
    return one.rule().equals(other.rule())
        && one.where().equals(other.where())
        && one.message().equals(other.message());
  }

  @Test
  void mostOfWhatIsFoundCanBeMendedByAMachine() throws Exception {
    int found = 0;
    int mended = 0;
    for (String id : RULES) {
      for (Path folder : Fixture.folders(Path.of("src/test/resources/rules", id))) {
        for (Finding finding : RuleBook.check(Fixture.read(folder, scratch).galley())) {
          found += finding.rule().equals(id) ? 1 : 0;
          mended += finding.rule().equals(id) && finding.fix().isPresent() ? 1 : 0;
        }
      }
    }
    assertTrue(mended * 3 > found * 2, mended + " of " + found);
  }

  private static Galley mended(Galley galley, Layout layout, Fix mend) {
    Layout mended = layout;
    List<Double> cuts = new ArrayList<>(galley.cuts().pages());
    if (mend instanceof Fix.Move move) {
      mended =
          change(
              layout, move.balloon(), laid -> laid.at(laid.box().map(box -> at(box, move.to()))));
    } else if (mend instanceof Fix.TailTo tail) {
      mended = change(layout, tail.balloon(), laid -> laid.withTip(tail.tail(), tail.tip()));
    } else if (mend instanceof Fix.MoveCut cut) {
      assertTrue(cuts.remove(cut.fromPx()), "no cut at " + cut.fromPx());
      cuts.add(cut.toPx());
    }
    Cuts newCuts = new Cuts(cuts.stream().sorted().toList(), true, List.of());
    return Compositor.compose(galley.set(), mended, newCuts);
  }

  private static Box at(Box box, XY corner) {
    return new Box(corner.x(), corner.y(), box.width(), box.height());
  }

  private static Layout change(Layout layout, String id, UnaryOperator<LaidBalloon> change) {
    return layout.withBalloons(
        layout.balloons().stream()
            .map(laid -> laid.id().equals(id) ? change.apply(laid) : laid)
            .toList());
  }

  @Test
  void whatThePersonPlacedIsNotMoved() throws Exception {
    Path folder = Path.of("src/test/resources/rules/space/margin/flags-left");
    Galley galley = Fixture.read(folder, scratch).galley();
    String json = Files.readString(folder.resolve("layout.json"));
    Galley pinned =
        Fixture.galley(galley.set(), json.replace("\"id\"", "\"pinned\": true, \"id\""));
    assertEquals(List.of(true), moves(galley));
    assertEquals(List.of(false), moves(pinned));
  }

  private static List<Boolean> moves(Galley galley) {
    return Fixture.rule("space/margin")
        .check(CheckedStrip.of(galley))
        .map(finding -> finding.fix().isPresent())
        .toList();
  }
}
