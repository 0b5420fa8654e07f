package io.github.readfall.art;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.geom.Box;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ArtStoreTest {

  private final Path folder;

  ArtStoreTest(@TempDir Path folder) {
    this.folder = folder;
  }

  private BufferedImage page(String name, int width, int height, long seed) throws IOException {
    BufferedImage page = Pages.page(width, height, BufferedImage.TYPE_INT_RGB, seed);
    Pages.write(page, folder.resolve(name));
    return page;
  }

  private StripArt art(int widthPx) {
    return StripArt.of(ArtFiles.in(folder), widthPx);
  }

  private static BufferedImage whole(ArtStore store, int level) {
    BufferedImage all =
        new BufferedImage(store.widthPx(level), store.heightPx(level), BufferedImage.TYPE_INT_RGB);
    for (int band = 0; band * ArtStore.BAND_ROWS < store.heightPx(level); band++) {
      BufferedImage image = store.band(level, band).orElseThrow();
      all.getRaster().setRect(0, band * ArtStore.BAND_ROWS, image.getRaster());
    }
    return all;
  }

  @Test
  void pagesAreStackedInNaturalOrderEachAsWideAsTheStrip() throws IOException {
    page("page10.png", 400, 300, 1);
    page("page2.jpg", 800, 500, 2);
    page("page1.jpeg", 1600, 100, 3);
    Files.writeString(folder.resolve("page3.png"), "no picture");
    Files.writeString(folder.resolve("page4.webp"), "another kind");
    Files.writeString(folder.resolve("notes.txt"), "no page");
    StripArt art = art(800);
    assertEquals(
        List.of("page1.jpeg", "page2.jpg", "page10.png"),
        art.pages().stream().map(page -> page.file().getFileName().toString()).toList());
    assertEquals(
        List.of(new Box(0, 0, 800, 50), new Box(0, 50, 800, 500), new Box(0, 550, 800, 600)),
        art.pages().stream().map(ArtPage::box).toList());
    assertEquals(1150, art.heightPx());
    assertEquals(2, art.problems().size(), art.problems().toString());
    assertTrue(art.problems().get(0).contains("page4.webp"), art.problems().toString());
    assertTrue(art.problems().get(1).contains("page3.png"), art.problems().toString());
  }

  @Test
  void anEpisodeWithoutArtHasNone() {
    StripArt art = StripArt.of(ArtFiles.in(folder.resolve("art")), 1600);
    assertEquals(StripArt.none(1600), art);
    assertEquals(0, art.heightPx());
  }

  @Test
  void artOfTheStripsWidthComesBackPixelForPixel() throws Exception {
    BufferedImage first = page("1.png", 301, 333, 1);
    BufferedImage second = page("2.png", 301, 200, 2);
    try (ArtStore store = ArtStore.of(art(301))) {
      assertTrue(store.fill((read, of) -> true));
      BufferedImage all = whole(store, 0);
      for (int y = 0; y < all.getHeight(); y++) {
        for (int x = 0; x < all.getWidth(); x++) {
          int expected = y < 333 ? first.getRGB(x, y) : second.getRGB(x, y - 333);
          assertEquals(expected, all.getRGB(x, y), x + ", " + y);
        }
      }
      assertEquals(List.of(), store.problems());
    }
  }

  @Test
  void eachLevelIsTheMeanOfFourPixelsOfTheOneAbove() throws Exception {
    page("1.png", 301, 333, 1);
    try (ArtStore store = ArtStore.of(art(301))) {
      store.fill((read, of) -> true);
      assertEquals(3, store.levels(), "301, 151 and 76 px wide");
      BufferedImage large = whole(store, 0);
      BufferedImage small = whole(store, 1);
      assertEquals(151, small.getWidth());
      assertEquals(167, small.getHeight());
      for (int y = 0; y < small.getHeight(); y++) {
        for (int x = 0; x < small.getWidth(); x++) {
          int sum = 0;
          for (int i = 0; i < 4; i++) {
            int px = Math.min(300, 2 * x + i % 2);
            int py = Math.min(332, 2 * y + i / 2);
            sum += large.getRGB(px, py) >> 8 & 255;
          }
          assertEquals((sum + 2) / 4, small.getRGB(x, y) >> 8 & 255, x + ", " + y);
        }
      }
    }
  }

  @Test
  void artOfAnotherWidthKeepsItsMeanColour() throws Exception {
    BufferedImage page = page("1.png", 450, 400, 7);
    for (int width : new int[] {300, 301, 450, 800}) {
      try (ArtStore store = ArtStore.of(art(width))) {
        store.fill((read, of) -> true);
        assertEquals(mean(page), mean(whole(store, 0)), 1.0, width + " px");
      }
    }
  }

  private static double mean(BufferedImage image) {
    long sum = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        sum += image.getRGB(x, y) & 255;
      }
    }
    return (double) sum / ((long) image.getWidth() * image.getHeight());
  }

  @Test
  void whatIsReadCanBeShownBeforeTheRest() throws Exception {
    page("1.png", 200, 1000, 1);
    try (ArtStore store = ArtStore.of(art(200))) {
      List<Integer> ready = new ArrayList<>();
      boolean all =
          store.fill(
              (read, of) -> {
                assertEquals(1000, of);
                ready.add(store.readyRows(0));
                return read < 512;
              });
      assertFalse(all, "stopped half way");
      assertEquals(List.of(256, 512), ready);
      assertTrue(store.band(0, 3).isPresent());
      assertTrue(store.band(0, 4).isEmpty());
    }
  }

  @Test
  void aPageThatBreaksOffIsWhiteBelowAndTheNextIsInItsPlace() throws Exception {
    page("1.png", 128, 600, 1);
    BufferedImage second = page("2.png", 128, 90, 2);
    byte[] bytes = Files.readAllBytes(folder.resolve("1.png"));
    Files.write(folder.resolve("1.png"), Arrays.copyOf(bytes, bytes.length / 2));
    try (ArtStore store = ArtStore.of(art(128))) {
      assertTrue(store.fill((read, of) -> true));
      BufferedImage all = whole(store, 0);
      assertEquals(0xFFFFFFFF, all.getRGB(64, 599));
      assertEquals(second.getRGB(64, 45), all.getRGB(64, 645));
      assertEquals(1, store.problems().size());
      assertTrue(store.problems().get(0).contains("1.png"), store.problems().toString());
    }
  }

  @Test
  void nothingIsLeftBehindWhenItIsClosed() throws Exception {
    page("1.png", 128, 300, 1);
    ArtStore store = ArtStore.of(art(128));
    store.fill((read, of) -> true);
    assertTrue(store.band(0, 0).isPresent());
    store.close();
    assertTrue(store.band(0, 0).isEmpty());
    assertFalse(Files.exists(store.file()), "the file is still there");
  }

  @Test
  void readingEndsQuietlyWhenItIsClosedMeanwhile() throws Exception {
    page("1.png", 128, 2000, 1);
    ArtStore store = ArtStore.of(art(128));
    assertFalse(
        store.fill(
            (read, of) -> {
              store.close();
              return true;
            }));
    assertEquals(List.of(), store.problems());
  }
}
