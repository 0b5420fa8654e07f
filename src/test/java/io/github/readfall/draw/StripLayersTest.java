package io.github.readfall.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.job.Proofer;
import io.github.readfall.job.StripProof;
import io.github.readfall.lettering.typeset.Labels;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.font.OpenFaces;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StripLayersTest {

  private static final double UNIT_PX = 1600 / 64.0;

  private record Shown(StripProof proof, StripLayers layers) {
    static Shown of(String folder) {
      try {
        FontShelf shelf = OpenFaces.shelf();
        EpisodeFiles files = EpisodeFiles.at(Path.of(folder)).get(0);
        StripProof proof = new Proofer(shelf, () -> 0).check(files);
        Labels labels = new Labels(proof.episode().shelf(), proof.episode().style());
        return new Shown(proof, StripLayers.of(proof.galley(), proof.findings(), labels));
      } catch (UnusablePath e) {
        throw new AssertionError(e);
      }
    }

    List<PlacedBalloon> balloons() {
      return proof.galley().balloons();
    }

    List<Box> fills(Layer layer) {
      return flat(layers.marks(layer))
          .filter(Mark.Fill.class::isInstance)
          .map(mark -> ((Mark.Fill) mark).outline().bounds())
          .toList();
    }

    List<Box> lines(Layer layer) {
      return flat(layers.marks(layer))
          .filter(Mark.Line.class::isInstance)
          .map(mark -> ((Mark.Line) mark).outline().bounds())
          .toList();
    }

    long glyphs(Layer layer) {
      return flat(layers.marks(layer)).filter(Mark.Glyphs.class::isInstance).count();
    }
  }

  private static Stream<Mark> flat(List<Mark> marks) {
    return marks.stream()
        .flatMap(mark -> mark instanceof Mark.Group group ? flat(group.marks()) : Stream.of(mark));
  }

  private static final Shown STRIP = Shown.of("docs/pictures/strip");

  @Test
  void panelsLieUnderArtAndTheirFramesOverIt() {
    List<Box> panels = STRIP.proof().galley().panels().stream().map(panel -> panel.box()).toList();
    assertEquals(panels, STRIP.fills(Layer.PANELS));
    assertTrue(STRIP.layers().underArt().stream().anyMatch(part -> part.layer() == Layer.PANELS));
    assertTrue(
        STRIP.layers().overArt().stream().noneMatch(part -> part.layer() == Layer.PANELS),
        "a pale box would hide the art");
    assertEquals(panels, STRIP.lines(Layer.PANEL_FRAMES));
  }

  @Test
  void letteringIsWhatEverySurfaceDraws() {
    assertEquals(
        GalleyArtist.lettering(STRIP.proof().galley()).size(),
        STRIP.layers().marks(Layer.LETTERING).size());
  }

  @Test
  void thePathHasADiscForEachBalloonAndALegBetweenTwo() {
    int balloons = STRIP.balloons().size();
    assertEquals(balloons, STRIP.fills(Layer.PATH).size());
    assertEquals(balloons - 1, STRIP.lines(Layer.PATH).size());
  }

  @ParameterizedTest
  @CsvSource({
    "docs/pictures/strip",
    "src/test/resources/rules/space/tight/flags-nearer-than-the-margin",
    "src/test/resources/strips/good/captions-in-every-corner",
    "src/test/resources/strips/good/conversation-with-mouths",
    "src/test/resources/strips/good/joined-balloons",
    "sample-scripts/overdue-tide/ep01",
    "src/test/resources/strips/good/every-manner"
  })
  void noDiscHidesALetter(String folder) {
    Shown shown = Shown.of(folder);
    List<Box> letters = shown.balloons().stream().flatMap(LetterBoxes::of).toList();
    assertFalse(letters.isEmpty());
    List<Box> hidden = new ArrayList<>();
    for (Box disc : shown.fills(Layer.PATH)) {
      XY middle = disc.centre();
      Box point = new Box(middle.x(), middle.y(), 0, 0);
      letters.stream()
          .filter(line -> line.distanceTo(point) < disc.width() / 2 - 0.01)
          .forEach(hidden::add);
    }
    assertEquals(List.of(), hidden);
  }

  @Test
  void marginsStandWhereTheStyleSays() {
    List<Double> x = STRIP.lines(Layer.MARGINS).stream().map(Box::x).distinct().sorted().toList();
    assertEquals(List.of(64.0, 1536.0), x);
    double bottom =
        STRIP.lines(Layer.MARGINS).stream().mapToDouble(Box::bottom).max().orElseThrow();
    assertEquals(STRIP.proof().galley().heightPx(), bottom, 1e-6);
  }

  @Test
  void aCrowdedGapIsMeasuredFromOutlineToOutline() {
    PlacedBalloon one = balloon("p2-1");
    PlacedBalloon other = balloon("p2-2");
    List<XY> ends = one.body().nearest(other.body());
    Box gap =
        Box.ofEdges(
            Math.min(ends.get(0).x(), ends.get(1).x()),
            Math.min(ends.get(0).y(), ends.get(1).y()),
            Math.max(ends.get(0).x(), ends.get(1).x()),
            Math.max(ends.get(0).y(), ends.get(1).y()));
    assertTrue(STRIP.lines(Layer.GAPS).contains(gap), "no measure at " + gap);
    assertTrue(STRIP.glyphs(Layer.GAPS) > 0, "no number");
  }

  private static PlacedBalloon balloon(String id) {
    return STRIP.balloons().stream().filter(b -> b.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void noNoteHidesALetter() {
    for (Layer layer : List.of(Layer.GAPS, Layer.FINDINGS, Layer.CUTS, Layer.PANEL_FRAMES)) {
      List<Box> plates = STRIP.fills(layer);
      assertFalse(plates.isEmpty(), layer + " has no note");
      for (Box plate : plates) {
        assertTrue(
            STRIP.balloons().stream().flatMap(LetterBoxes::of).noneMatch(plate::meets),
            layer + " hides letters at " + plate);
      }
    }
  }

  @Test
  void aFrameRoundAFindingDoesNotCrossLetters() {
    List<Box> letters = STRIP.balloons().stream().flatMap(LetterBoxes::of).toList();
    List<Box> sides =
        STRIP.lines(Layer.FINDINGS).stream()
            .filter(side -> side.width() == 0 || side.height() == 0)
            .toList();
    assertFalse(sides.isEmpty(), "the frame round the inverted pair is not cut");
    sides.forEach(side -> assertTrue(letters.stream().noneMatch(side::meets), side.toString()));
  }

  @Test
  void aPageCutGoesRightAcrossAndASliceHasATickOnEitherSide() {
    double slice = STRIP.proof().galley().cuts().slices().get(0);
    double tick = 1.5 * UNIT_PX;
    assertEquals(
        List.of(
            new Box(0, 4300, 1600, 0),
            new Box(0, slice, tick, 0),
            new Box(1600 - tick, slice, tick, 0)),
        STRIP.lines(Layer.CUTS));
  }

  @Test
  void everyTailsTipIsMarked() {
    long tails = STRIP.balloons().stream().filter(b -> b.tail().isPresent()).count();
    assertEquals(2 * tails, STRIP.lines(Layer.TAILS).size(), "a ring and its halo each");
  }

  @Test
  void aMouthIsACross() {
    Shown shown = Shown.of("src/test/resources/strips/good/conversation-with-mouths");
    XY mouth = shown.proof().galley().mouths().get(0).at();
    long strokes =
        shown.lines(Layer.TAILS).stream()
            .filter(line -> line.centre().distanceTo(mouth) < 1e-6 && line.width() < 2 * UNIT_PX)
            .count();
    assertEquals(4, strokes, "two strokes and the halo of each");
  }

  @Test
  void aGoodStripHasNothingInTheLayersOfFaults() {
    Shown shown = Shown.of("src/test/resources/strips/good/conversation-with-mouths");
    for (Layer layer : List.of(Layer.GAPS, Layer.OVERFLOW, Layer.FINDINGS)) {
      assertEquals(List.of(), shown.layers().marks(layer), layer.toString());
    }
  }

  @Test
  void textThatLeavesItsOutlineIsUnderlinedWhereItDoes() {
    Shown shown = Shown.of("src/test/resources/rules/space/overflow/flags-text-leaves-its-outline");
    PlacedBalloon balloon = shown.balloons().get(0);
    List<Box> bars = shown.lines(Layer.OVERFLOW);
    assertFalse(bars.isEmpty());
    List<Box> lines = LetterBoxes.of(balloon).toList();
    for (Box bar : bars) {
      assertTrue(
          lines.stream()
              .anyMatch(line -> line.x() <= bar.x() + 1e-6 && line.right() >= bar.right() - 1e-6),
          "a bar under no line: " + bar);
    }
    assertTrue(shown.glyphs(Layer.OVERFLOW) > 0, "no number");
  }

  @ParameterizedTest
  @CsvSource({"flags-left, 0", "flags-below, 1"})
  void whatLeavesTheStripIsMarkedAtTheEdgeItCrosses(String name, int below) {
    Shown shown = Shown.of("src/test/resources/rules/space/outside/" + name);
    Box bar = shown.lines(Layer.OVERFLOW).get(0);
    double edge = below == 1 ? shown.proof().galley().heightPx() - bar.bottom() : bar.x();
    assertEquals(UNIT_PX / 4, edge, 1e-6);
    assertEquals(0, below == 1 ? bar.height() : bar.width(), 1e-6);
  }
}
