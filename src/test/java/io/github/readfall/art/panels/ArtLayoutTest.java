package io.github.readfall.art.panels;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.strip.CueMark;
import io.github.readfall.strip.Extra;
import io.github.readfall.strip.KeepClear;
import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.Mouth;
import io.github.readfall.strip.Opening;
import io.github.readfall.strip.PanelBox;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ArtLayoutTest {

  private static final Extra MINE = new Extra(Map.of("mine", "1"));

  private static LaidBalloon balloon(int panel, Box box, XY tip, boolean pinned) {
    return new LaidBalloon(
        "p" + panel + "-1",
        Optional.of(new CueMark(panel, "ILSE", "Well.")),
        Optional.empty(),
        Optional.of(box),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        List.of(tip),
        pinned,
        false,
        Extra.NONE);
  }

  private static final Layout BEFORE =
      new Layout(
          1600,
          3000,
          List.of(
              new PanelBox(1, new Box(100, 100, 1400, 1000), "long shot", MINE),
              new PanelBox(2, new Box(100, 1200, 1400, 1000))),
          List.of(new KeepClear(new Box(200, 1300, 100, 100), "face", MINE)),
          List.of(new Mouth(2, "ILSE", new XY(800, 1700), Extra.NONE)),
          List.of(
              balloon(1, new Box(200, 200, 300, 200), new XY(500, 600), true),
              balloon(2, new Box(200, 1400, 300, 200), new XY(800, 1650), true)),
          Optional.of(List.of(1150.0, 2900.0)),
          MINE);

  private static MatchedPanel panel(int number, Box box) {
    return new MatchedPanel(number, new FoundPanel(box, 1, ""));
  }

  @Test
  void whatLiesInAPanelGoesWithIt() {
    Layout now =
        ArtLayout.in(
            BEFORE,
            2600,
            List.of(
                panel(1, new Box(100, 100, 1400, 1000)), panel(2, new Box(100, 1500, 1400, 1000))));
    assertEquals(2600, now.heightPx());
    assertEquals(new Box(200, 200, 300, 200), now.balloons().get(0).box().orElseThrow());
    assertEquals(new Box(200, 1700, 300, 200), now.balloons().get(1).box().orElseThrow());
    assertEquals(new XY(800, 1950), now.balloons().get(1).tailsTo().get(0));
    assertEquals(new XY(800, 2000), now.mouths().get(0).at());
    assertEquals(new Box(200, 1600, 100, 100), now.keepClear().get(0).box());
    assertEquals(Optional.of(List.of(1150.0)), now.cuts());
    assertEquals(MINE, now.extra());
    assertEquals(MINE, now.panels().get(0).extra());
    assertEquals("long shot", now.panels().get(0).heading());
  }

  @Test
  void inAPanelOfAnotherSizeItKeepsItsSharesAndBalloonsTheirSize() {
    Layout now = ArtLayout.in(BEFORE, 3000, List.of(panel(2, new Box(100, 1200, 700, 500))));
    assertEquals(new Box(75, 1250, 300, 200), now.balloons().get(1).box().orElseThrow());
    assertEquals(new XY(450, 1450), now.mouths().get(0).at());
    assertEquals(List.of(2), now.panels().stream().map(PanelBox::panel).toList());
  }

  @Test
  void aBoxThatIsOnlyMoreExactMovesNothingInIt() {
    Layout now =
        ArtLayout.in(
            BEFORE,
            3000,
            List.of(
                panel(1, new Box(110, 92, 1384, 1013)), panel(2, new Box(90, 1205, 1410, 1000))));
    assertEquals(BEFORE.balloons(), now.balloons());
    assertEquals(BEFORE.mouths(), now.mouths());
    assertEquals(BEFORE.keepClear(), now.keepClear());
    assertEquals(new Box(110, 92, 1384, 1013), now.panels().get(0).box());
  }

  @Test
  void roomThatWasAskedForIsForgottenWhenTheArtIsDrawn() {
    Layout opened = new Opening(1150, 200).in(BEFORE);
    assertEquals(1, opened.openings().size());
    assertEquals(List.of(), ArtLayout.in(opened, 3000, List.of()).openings());
  }
}
