package io.github.readfall.art.panels;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.Endurance;
import io.github.readfall.art.UnreadableArt;
import io.github.readfall.base.geom.Box;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/**
 * Finds panels in strips that are drawn here, so that every box is known. The larger count is in
 * docs/panels.md, made by {@link FinderFigures}.
 */
@Execution(ExecutionMode.SAME_THREAD)
class PanelFinderTest {

  /** Not the seeds that the limits were found with. */
  private static final long SEED = 5000;

  private static final int STRIPS = Endurance.rounds(3, 5);
  private static final double CLEAN = 0.98;
  private static final double HARD = 0.95;

  @TestFactory
  Stream<DynamicTest> panelsOfEveryKindOfStripAreFound() {
    return Arrays.stream(DrawnKind.values())
        .filter(kind -> kind != DrawnKind.MIXED)
        .map(kind -> DynamicTest.dynamicTest(kind.name(), () -> check(kind)));
  }

  private static void check(DrawnKind kind) throws UnreadableArt {
    Hits all = Hits.NONE;
    for (long seed = SEED; seed < SEED + STRIPS; seed++) {
      DrawnStrip strip = StripDrawer.draw(kind, 800, seed);
      List<FoundPanel> found = PanelFinder.find(strip.rows()).panels();
      all = all.and(Hits.of(strip.panels(), found.stream().map(FoundPanel::box).toList()));
    }
    assertTrue(all.rate() >= (kind.isHard() ? HARD : CLEAN), kind + ": " + all);
  }

  private static List<FoundPanel> found(BufferedImage image) throws UnreadableArt {
    return PanelFinder.find(new DrawnStrip(image, List.of()).rows()).panels();
  }

  private static BufferedImage paper(int height) {
    BufferedImage image = new BufferedImage(800, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, 800, height);
    g.dispose();
    return image;
  }

  private static void fill(BufferedImage image, Color colour, Box box) {
    Graphics2D g = image.createGraphics();
    g.setColor(colour);
    g.fillRect((int) box.x(), (int) box.y(), (int) box.width(), (int) box.height());
    g.dispose();
  }

  @Test
  void emptyPaperHasNoPanel() throws UnreadableArt {
    assertEquals(List.of(), found(paper(1200)));
    assertEquals(List.of(), found(paper(1)));
  }

  @Test
  void aPictureWithoutAnyGutterIsOnePanelThatThePictureEnds() throws UnreadableArt {
    BufferedImage image = paper(900);
    for (int x = 0; x < 800; x += 4) {
      fill(image, new Color(30, x / 4, 140), new Box(x, 0, 2, 900));
    }
    List<FoundPanel> found = found(image);
    assertEquals(1, found.size());
    assertTrue(Hits.isNear(new Box(0, 0, 800, 900), found.get(0).box()), found.toString());
    assertTrue(found.get(0).reason().contains("the picture ends at its edge"), found.toString());
  }

  @Test
  void whatIsLessCertainSaysWhy() throws UnreadableArt {
    BufferedImage image = paper(1000);
    fill(image, new Color(120, 40, 40), new Box(60, 60, 680, 400));
    fill(image, new Color(40, 120, 40), new Box(60, 540, 680, 400));
    List<FoundPanel> clear = found(image);
    assertEquals(2, clear.size());
    clear.forEach(panel -> assertEquals("clear gutters all round", panel.reason()));
    fill(image, new Color(250, 250, 120), new Box(300, 400, 200, 200));
    List<FoundPanel> crossed = found(image);
    assertEquals(2, crossed.size());
    for (FoundPanel panel : crossed) {
      assertTrue(panel.reason().contains("something crosses its gutter"), panel.reason());
      assertTrue(panel.certainty() < clear.get(0).certainty(), panel.toString());
    }
  }

  @Test
  void aCaptionInAGutterIsNoPanel() throws UnreadableArt {
    BufferedImage image = paper(1100);
    fill(image, new Color(120, 40, 40), new Box(60, 60, 680, 400));
    fill(image, new Color(40, 120, 40), new Box(60, 640, 680, 400));
    fill(image, Color.BLACK, new Box(200, 500, 380, 100));
    fill(image, new Color(255, 250, 220), new Box(203, 503, 374, 94));
    for (int x = 240; x < 530; x += 14) {
      fill(image, Color.BLACK, new Box(x, 530, 6, 30));
    }
    assertEquals(2, found(image).size());
  }

  @Test
  void theSameArtGivesTheSamePanels() throws UnreadableArt {
    DrawnStrip strip = StripDrawer.draw(DrawnKind.MIXED, 800, SEED);
    assertEquals(PanelFinder.find(strip.rows()).panels(), PanelFinder.find(strip.rows()).panels());
  }
}
