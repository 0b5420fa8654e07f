package io.github.readfall.strip.gesture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.job.Proofer;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.Surroundings;
import io.github.readfall.strip.edits.StripEdit;
import io.github.readfall.strip.edits.StripItem;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.json.LayoutReader;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.font.OpenFaces;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GestureTest {

  private static final Galley GALLEY = galley();
  private static final StripItem FIRST = new StripItem.Balloon("p1-1");
  private static final StripItem SECOND = new StripItem.Balloon("p1-2");

  private static Galley galley() {
    try {
      FontShelf faces = OpenFaces.shelf();
      EpisodeFiles files = new EpisodeFiles(Path.of("nowhere", "script.txt"), Optional.empty());
      String layout =
          """
          {"readfall-layout": 1, "strip": {"widthPx": 1600, "heightPx": 3000},
           "panels": [{"panel": 1, "box": [100, 100, 1400, 1200]},
                      {"panel": 2, "box": [100, 1500, 1400, 1200]}],
           "keepClear": [{"box": [1000, 800, 200, 200]}],
           "speakers": [{"panel": 1, "speaker": "ILSE", "mouth": [400, 1000]}],
           "balloons": [{"id": "p1-1", "box": [200, 200, 420, 240], "tailTo": [400, 990]},
                        {"id": "p1-2", "box": [900, 300, 420, 240], "tailsTo": [[1100, 700], [1250, 720]]},
                        {"id": "p2-1", "box": [200, 1600, 420, 240], "tailTo": [400, 2200]}]}
          """;
      return new Proofer(faces, () -> 0)
          .check(
              Surroundings.read(files, faces)
                  .withLaid(Optional.of(new LayoutReader().read(layout)))
                  .with("PANEL 1\nILSE: It turns.\nWOUTER: Leave it.\nPANEL 2\nILSE: Listen.\n"))
          .galley();
    } catch (UnusablePath e) {
      throw new AssertionError(e);
    }
  }

  private static Box box(StripItem item) {
    return new ElementPlaces(GALLEY).box(item).orElseThrow();
  }

  private static Grip at(double x, double y, StripItem... chosen) {
    return new Grips(GALLEY, Set.of(chosen), 12).at(new XY(x, y));
  }

  @Test
  void smallThingsAreTakenBeforeLargeOnesAndPanelsOnlyOnceTheyAreChosen() {
    XY middle = box(FIRST).centre();
    assertEquals(new Grip.Body(FIRST), at(middle.x(), middle.y()));
    assertEquals(new Grip.Body(new StripItem.Area(0)), at(1100, 900));
    assertEquals(new Grip.Body(new StripItem.Mouth(1, "ILSE")), at(404, 1003));
    assertEquals(new Grip.Background(), at(700, 1200));
    assertEquals(new Grip.Body(new StripItem.Panel(1)), at(700, 1200, new StripItem.Panel(1)));
    assertEquals(new Grip.Background(), at(50, 50));
  }

  @Test
  void whatIsChosenHasGripsAtItsSidesAndItsTail() {
    Box box = box(SECOND);
    assertEquals(new Grip.Edge(SECOND, 1, 1), at(box.right() + 3, box.bottom() + 3, SECOND));
    assertEquals(new Grip.Edge(SECOND, -1, 0), at(box.x(), box.centre().y(), SECOND));
    assertEquals(new Grip.Body(new StripItem.Tip("p1-2", 0)), at(1103, 704, SECOND));
    assertEquals(new Grip.Body(new StripItem.Tip("p1-2", 1)), at(1247, 721, SECOND));
    assertEquals(new Grip.Background(), at(1103, 704));
    assertEquals(
        new Grip.Body(SECOND),
        at(box.centre().x(), box.y() + 1, SECOND, FIRST),
        "several have no sides to pull at");
  }

  @Test
  void theGutterAboveAPanelThatIsChosenCanBePulled() {
    assertEquals(new Grip.Gutter(2), at(450, 1496, new StripItem.Panel(2)));
    assertEquals(
        Optional.of(new StripEdit.Gutter(2, 70)),
        new Gesture(new Grip.Gutter(2), Set.of(), GALLEY, new XY(450, 1500))
            .to(new XY(480, 1570), false));
  }

  private static Optional<StripEdit> pulled(
      Grip grip, Set<StripItem> chosen, double dx, double dy) {
    return new Gesture(grip, chosen, GALLEY, new XY(500, 500))
        .to(new XY(500 + dx, 500 + dy), false);
  }

  @Test
  void balloonsThatAreChosenGoTogetherInWholePixels() {
    Grip body = new Grip.Body(FIRST);
    assertEquals(
        Optional.of(new StripEdit.Move(Set.of("p1-1", "p1-2"), 10, -7)),
        pulled(body, Set.of(FIRST, SECOND), 10.4, -7.4));
    assertEquals(
        Optional.of(new StripEdit.Move(Set.of("p1-1"), 10, 0)),
        pulled(body, Set.of(SECOND), 10, 0),
        "one that is not chosen goes alone");
    assertEquals(Optional.empty(), pulled(body, Set.of(), 0.3, -0.4));
  }

  @ParameterizedTest
  @CsvSource({"30, 4, 30, 0", "-3, 20, 0, 20", "5, -5, 5, 0"})
  void straightGoesOnlyTheLongerWay(double dx, double dy, double wantedX, double wantedY) {
    Gesture gesture = new Gesture(new Grip.Body(FIRST), Set.of(), GALLEY, new XY(0, 0));
    assertEquals(
        Optional.of(new StripEdit.Move(Set.of("p1-1"), wantedX, wantedY)),
        gesture.to(new XY(dx, dy), true));
  }

  @Test
  void aSideMovesAloneAndNothingBecomesSmallerThanItCanBeSeen() {
    StripItem area = new StripItem.Area(0);
    assertEquals(
        Optional.of(new StripEdit.PutArea(0, new Box(1000, 800, 230, 200))),
        pulled(new Grip.Edge(area, 1, 0), Set.of(area), 30, 99));
    assertEquals(
        Optional.of(new StripEdit.PutArea(0, new Box(1184, 840, 16, 160))),
        pulled(new Grip.Edge(area, -1, -1), Set.of(area), 900, 40));
  }

  @Test
  void pointsAreMovedToWhereThePointerIs() {
    assertEquals(
        Optional.of(new StripEdit.Aim("p1-2", 0, new XY(1105, 698))),
        pulled(new Grip.Body(new StripItem.Tip("p1-2", 0)), Set.of(), 5, -2));
    assertEquals(
        Optional.of(new StripEdit.Aim("p1-2", 1, new XY(1255, 718))),
        pulled(new Grip.Body(new StripItem.Tip("p1-2", 1)), Set.of(), 5, -2));
    assertEquals(
        Optional.of(new StripEdit.PutMouth(new StripItem.Mouth(1, "ILSE"), new XY(405, 998))),
        pulled(new Grip.Body(new StripItem.Mouth(1, "ILSE")), Set.of(), 5, -2));
  }

  @Test
  void overTheGroundABoxIsDrawnThatChoosesWhatLiesInIt() {
    Gesture ground = new Gesture(new Grip.Background(), Set.of(), GALLEY, new XY(120, 120));
    assertEquals(Optional.empty(), ground.to(new XY(1400, 900), false));
    assertEquals(List.of(FIRST, SECOND), ground.within(new Box(120, 120, 1380, 600)));
    assertEquals(List.of(FIRST), ground.within(new Box(120, 120, 600, 600)));
  }

  @Test
  void aClickChoosesThePanelWhereNothingLies() {
    Grips grips = new Grips(GALLEY, Set.of(), 12);
    assertEquals(Optional.of(new StripItem.Panel(2)), grips.clicked(new XY(1200, 2300)));
    assertEquals(Optional.empty(), grips.clicked(new XY(20, 20)));
  }

  @Test
  void everythingIsThereInTheOrderOfTheScript() {
    assertEquals(
        List.of(
            new StripItem.Panel(1),
            FIRST,
            SECOND,
            new StripItem.Mouth(1, "ILSE"),
            new StripItem.Area(0),
            new StripItem.Panel(2),
            new StripItem.Balloon("p2-1")),
        new ElementPlaces(GALLEY).all());
    new ElementPlaces(GALLEY).all().forEach(item -> assertInstanceOf(Box.class, box(item)));
  }
}
