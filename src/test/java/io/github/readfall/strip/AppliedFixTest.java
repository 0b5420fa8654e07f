package io.github.readfall.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.readfall.base.finding.Fix;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.strip.json.LayoutReader;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AppliedFixTest {

  private static final String JSON =
      """
      {"strip": {"widthPx": 1600, "heightPx": 9000}, "panels": [],
       "balloons": [{"id": "p1-1", "box": [10, 20, 300, 200], "tailTo": [50, 400]},
                    {"id": "p1-2", "box": [10, 620, 300, 200], "pinned": true},
                    {"id": "p1-3"}],
       "cuts": [1000, 2000, 3000]}
      """;
  private static final Layout LAYOUT = new LayoutReader().read(JSON).layout().orElseThrow();

  @Test
  void aBalloonMovesAndItsTailEndsWhereItDid() {
    Layout mended = AppliedFix.apply(LAYOUT, new Fix.Move("p1-1", new XY(15, 10)));
    assertEquals(Optional.of(new Box(15, 10, 300, 200)), mended.balloons().get(0).box());
    assertEquals(List.of(new XY(50, 400)), mended.balloons().get(0).tailsTo());
    assertEquals(LAYOUT, AppliedFix.apply(mended, new Fix.Move("p1-1", new XY(10, 20))));
  }

  @Test
  void aBalloonGetsAnotherSizeAndItsTailStays() {
    Box box = new Box(5, 6, 400, 250);
    LaidBalloon mended = AppliedFix.apply(LAYOUT, new Fix.Resize("p1-1", box)).balloons().get(0);
    assertEquals(Optional.of(box), mended.box());
    assertEquals(List.of(new XY(50, 400)), mended.tailsTo());
  }

  @Test
  void aTailEndsElsewhereAndItsBalloonStays() {
    LaidBalloon mended =
        AppliedFix.apply(LAYOUT, new Fix.TailTo("p1-1", 0, new XY(1, 2))).balloons().get(0);
    assertEquals(List.of(new XY(1, 2)), mended.tailsTo());
    assertEquals(LAYOUT.balloons().get(0).box(), mended.box());
  }

  @ParameterizedTest
  @ValueSource(strings = {"p1-2", "p9-9"})
  void whatIsPinnedOrNotThereStays(String id) {
    assertEquals(LAYOUT, AppliedFix.apply(LAYOUT, new Fix.Move(id, new XY(0, 0))));
    assertEquals(LAYOUT, AppliedFix.apply(LAYOUT, new Fix.Resize(id, new Box(0, 0, 1, 1))));
    assertEquals(LAYOUT, AppliedFix.apply(LAYOUT, new Fix.TailTo(id, 0, new XY(0, 0))));
  }

  @Test
  void whatIsLetteredAlreadyStaysAsItIs() {
    Layout lettered =
        LAYOUT.withBalloons(
            LAYOUT.balloons().stream()
                .map(balloon -> balloon.id().equals("p1-1") ? lettered(balloon) : balloon)
                .toList());
    assertEquals(lettered, AppliedFix.apply(lettered, new Fix.Move("p1-1", new XY(15, 10))));
    assertEquals(lettered, AppliedFix.apply(lettered, new Fix.TailTo("p1-1", 0, new XY(1, 2))));
  }

  private static LaidBalloon lettered(LaidBalloon b) {
    return new LaidBalloon(
        b.id(),
        b.cue(),
        b.shape(),
        b.box(),
        OptionalDouble.of(64),
        b.capitalPx(),
        b.tailsTo(),
        b.pinned(),
        b.bleed(),
        b.extra());
  }

  @Test
  void whatHasNoPlaceIsNotMoved() {
    assertEquals(LAYOUT, AppliedFix.apply(LAYOUT, new Fix.Move("p1-3", new XY(0, 0))));
  }

  @Test
  void theCutThatIsMeantMovesAndTheyStayInOrder() {
    assertEquals(List.of(1000.0, 1950.0, 3000.0), cuts(new Fix.MoveCut(2000.2, 1950)));
    assertEquals(List.of(2000.0, 3000.0, 3100.0), cuts(new Fix.MoveCut(1000, 3100)));
    assertEquals(List.of(1000.0, 2000.0, 3000.0), cuts(new Fix.MoveCut(1500, 3100)));
  }

  @Test
  void cutsThatAreLeftToBePlannedStaySo() {
    Layout planned = LAYOUT.withCuts(Optional.empty());
    assertEquals(planned, AppliedFix.apply(planned, new Fix.MoveCut(1000, 900)));
  }

  private static List<Double> cuts(Fix mend) {
    return AppliedFix.apply(LAYOUT, mend).cuts().orElseThrow();
  }
}
