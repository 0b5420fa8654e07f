package io.github.readfall.window.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.viewing.Colour;
import io.github.readfall.draw.Layer;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class TilesTest {

  private static final int HEIGHT_PX = 20_000;
  private static final Set<Layer> ALL = EnumSet.allOf(Layer.class);
  private static final Rectangle PART = new Rectangle(0, 5000, 800, 600);

  private final Tiles tiles = new Tiles(64L << 20, false, part -> {});

  private BufferedImage paint(StripScene scene, Set<Layer> layers, double scale) throws Exception {
    return Strips.onEvents(
        () -> {
          BufferedImage image =
              new BufferedImage(PART.width, PART.height, BufferedImage.TYPE_INT_RGB);
          Graphics2D g = image.createGraphics();
          g.translate(-PART.x, -PART.y);
          tiles.show(scene, layers, scale);
          tiles.paint(g, PART, PART);
          return image;
        });
  }

  private BufferedImage settled(StripScene scene, Set<Layer> layers, double scale)
      throws Exception {
    paint(scene, layers, scale);
    Strips.until(tiles::isSettled, "settled");
    BufferedImage image = paint(scene, layers, scale);
    assertEquals(0, tiles.missing());
    return image;
  }

  private static void isStripedFrom(double stripTop, double scale, BufferedImage image) {
    for (int y = 25; y < image.getHeight(); y += 50) {
      int expected = Strips.stripe(stripTop + y / scale).rgb();
      assertEquals(new Colour(expected), new Colour(image.getRGB(30, y) & 0xffffff), "at " + y);
    }
  }

  @Test
  void everyPartOfTheStripIsAtItsPlace() throws Exception {
    isStripedFrom(5000, 1, settled(Strips.striped(HEIGHT_PX, 0), ALL, 1));
  }

  @Test
  void panelsStandInAtOnceForTilesThatAreNotReady() throws Exception {
    BufferedImage first = paint(Strips.striped(HEIGHT_PX, 5100), ALL, 1);
    assertTrue(tiles.missing() > 0, "nothing was missing at the first painting");
    isStripedFrom(5000, 1, first);
    assertNotEquals(Strips.NOTE.rgb(), first.getRGB(450, 125) & 0xffffff, "painted on the spot");
  }

  @Test
  void oldTilesStayUntilTheNewOnesAreReady() throws Exception {
    settled(Strips.striped(HEIGHT_PX, 5100), ALL, 1);
    BufferedImage atOnce = paint(Strips.striped(HEIGHT_PX, 5400), ALL, 1);
    assertEquals(Strips.NOTE.rgb(), atOnce.getRGB(450, 125) & 0xffffff, "the old note is gone");
    BufferedImage later = settled(Strips.striped(HEIGHT_PX, 5400), ALL, 1);
    assertEquals(Strips.NOTE.rgb(), later.getRGB(450, 425) & 0xffffff);
    assertNotEquals(Strips.NOTE.rgb(), later.getRGB(450, 125) & 0xffffff);
  }

  @Test
  void tilesOfANewSceneThatLookTheSameAreKept() throws Exception {
    settled(Strips.striped(HEIGHT_PX, 100), ALL, 1);
    paint(Strips.striped(HEIGHT_PX, 15_000), ALL, 1);
    assertEquals(0, tiles.missing(), "nothing in view has changed");
    paint(Strips.striped(HEIGHT_PX, 5050), ALL, 1);
    assertEquals(1, tiles.missing(), "the tile with the note, and no other");
  }

  @Test
  void aLayerThatIsSwitchedOffIsGone() throws Exception {
    StripScene scene = Strips.striped(HEIGHT_PX, 5100);
    settled(scene, ALL, 1);
    BufferedImage without = settled(scene, EnumSet.of(Layer.PANELS), 1);
    assertEquals(Strips.stripe(5125).rgb(), without.getRGB(450, 125) & 0xffffff);
  }

  @Test
  void anotherScaleStandsInAtOnce() throws Exception {
    StripScene scene = Strips.striped(HEIGHT_PX, 2700);
    settled(scene, ALL, 2);
    assertFalse(tiles.missing() > 0);
    BufferedImage atOnce = paint(scene, ALL, 1.9);
    assertTrue(tiles.missing() > 0);
    assertTrue(has(atOnce, Strips.NOTE), "what was seen before is not shown stretched");
  }

  private static boolean has(BufferedImage image, Colour colour) {
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        if ((image.getRGB(x, y) & 0xffffff) == colour.rgb()) {
          return true;
        }
      }
    }
    return false;
  }

  @Test
  void theCacheKeepsToItsMemoryAndForgetsTheOldest() {
    TileCache cache = new TileCache(3 * 4 * 100 * 100);
    for (int row = 0; row < 10; row++) {
      BufferedImage image = new BufferedImage(100, 100, BufferedImage.TYPE_INT_RGB);
      cache.put(1, new TileGrid.Id(0, row), new TileCache.Tile(image, row));
      cache.get(1, new TileGrid.Id(0, 0));
    }
    assertEquals(3 * 4 * 100 * 100, cache.bytes());
    assertTrue(cache.get(1, new TileGrid.Id(0, 0)).isPresent(), "what was just looked at is gone");
    assertTrue(cache.get(1, new TileGrid.Id(0, 9)).isPresent());
    assertTrue(cache.get(1, new TileGrid.Id(0, 5)).isEmpty());
  }
}
