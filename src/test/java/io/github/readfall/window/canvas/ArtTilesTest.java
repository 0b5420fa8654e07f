package io.github.readfall.window.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.art.ArtFiles;
import io.github.readfall.art.ArtStore;
import io.github.readfall.art.StripArt;
import io.github.readfall.draw.Layer;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ArtTilesTest {

  private static final int WIDTH_PX = (int) Strips.WIDTH_PX;
  private static final int HEIGHT_PX = 3000;

  private final Path folder;

  ArtTilesTest(@TempDir Path folder) {
    this.folder = folder;
  }

  private interface Colouring {
    int rgb(int x, int y);
  }

  private BufferedImage page(Colouring colouring) throws IOException {
    BufferedImage page = new BufferedImage(WIDTH_PX, HEIGHT_PX, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < HEIGHT_PX; y++) {
      for (int x = 0; x < WIDTH_PX; x++) {
        page.setRGB(x, y, colouring.rgb(x, y));
      }
    }
    ImageIO.write(page, "png", folder.resolve("page.png").toFile());
    return page;
  }

  private ArtStore store() throws Exception {
    return ArtStore.of(StripArt.of(ArtFiles.in(folder), WIDTH_PX));
  }

  private static TilePainter painter(ArtStore store, double scale) {
    StripScene scene = Strips.striped(HEIGHT_PX, 1000).with(Optional.of(store));
    return new TilePainter(scene, EnumSet.allOf(Layer.class), TileGrid.of(scene, scale));
  }

  @Test
  void artHidesThePanelsAndIsHiddenByMarks() throws Exception {
    BufferedImage page = page((x, y) -> x * 7 + y * 13);
    try (ArtStore store = store()) {
      store.fill((read, of) -> true);
      TilePainter painter = painter(store, 1);
      for (TileGrid.Id id : painter.grid().tilesIn(new Rectangle(0, 700, 800, 900))) {
        Rectangle place = painter.grid().place(id);
        BufferedImage tile = painter.paint(id, new JoinedBands());
        for (int y = 0; y < place.height; y++) {
          int strip = place.y + y;
          boolean noted = strip >= 1000 && strip < 1050;
          assertEquals(
              noted ? 0xFF000000 | Strips.NOTE.rgb() : page.getRGB(450, strip),
              tile.getRGB(450, y),
              "at " + strip);
          assertEquals(page.getRGB(799, strip), tile.getRGB(799, y), "at " + strip);
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.05, 0.37, 0.5, 0.81, 1.3, 2})
  void noSeamIsSeenBetweenBandsOrTiles(double scale) throws Exception {
    page((x, y) -> 0x5a6b7c);
    try (ArtStore store = store()) {
      store.fill((read, of) -> true);
      TilePainter painter = painter(store, scale);
      JoinedBands pasteUp = new JoinedBands();
      Rectangle all = new Rectangle(painter.grid().widthPx(), painter.grid().heightPx());
      for (TileGrid.Id id : painter.grid().tilesIn(all)) {
        BufferedImage tile = painter.paint(id, pasteUp);
        for (int y = 0; y < tile.getHeight(); y++) {
          assertEquals(0xFF5a6b7c, tile.getRGB(2, y), id + " at " + y);
        }
      }
    }
  }

  @Test
  void aSmallerStripKeepsTheArtInItsPlace() throws Exception {
    page((x, y) -> y < 1500 ? 0x204060 : 0xe0c0a0);
    try (ArtStore store = store()) {
      store.fill((read, of) -> true);
      TilePainter painter = painter(store, 0.3);
      TileGrid.Id id = new TileGrid.Id(0, 450 / TileGrid.TILE_HEIGHT);
      BufferedImage tile = painter.paint(id, new JoinedBands());
      int edge = 450 - painter.grid().place(id).y;
      assertEquals(0xFF204060, tile.getRGB(5, edge - 3));
      assertEquals(0xFFe0c0a0, tile.getRGB(5, edge + 3));
    }
  }

  @Test
  void aTileIsPaintedAgainWhenItsArtHasCome() throws Exception {
    page((x, y) -> 0x123456);
    try (ArtStore store = store()) {
      TilePainter painter = painter(store, 1);
      TileGrid.Id id = new TileGrid.Id(0, 2);
      long before = painter.artFingerprint(id);
      BufferedImage without = painter.paint(id, new JoinedBands());
      assertEquals(Strips.stripe(500).rgb(), without.getRGB(5, 30) & 0xffffff);
      store.fill((read, of) -> true);
      assertNotEquals(before, painter.artFingerprint(id));
      assertEquals(0x123456, painter.paint(id, new JoinedBands()).getRGB(5, 30) & 0xffffff);
    }
  }

  @Test
  void aTileAboveIsNotPaintedAgainWhenArtComesBelow() throws Exception {
    page((x, y) -> 0x123456);
    try (ArtStore store = store()) {
      TilePainter painter = painter(store, 1);
      TileGrid.Id top = new TileGrid.Id(0, 0);
      TileGrid.Id below = new TileGrid.Id(0, 10);
      boolean[] seen = new boolean[1];
      long[] fingerprints = new long[2];
      store.fill(
          (read, of) -> {
            if (read == 1024) {
              fingerprints[0] = painter.artFingerprint(top);
              fingerprints[1] = painter.artFingerprint(below);
              seen[0] = true;
            }
            return true;
          });
      assertTrue(seen[0]);
      assertEquals(fingerprints[0], painter.artFingerprint(top));
      assertNotEquals(fingerprints[1], painter.artFingerprint(below));
    }
  }
}
