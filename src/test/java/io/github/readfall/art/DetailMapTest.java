package io.github.readfall.art;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.geom.Box;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DetailMapTest {

  @Test
  void theDetailOfABoxIsTheMeanOfItsCells() {
    SplittableRandom random = new SplittableRandom(7);
    int columns = 13;
    int rows = 31;
    float[] cells = new float[columns * rows];
    for (int i = 0; i < cells.length; i++) {
      cells[i] = (float) random.nextDouble();
    }
    DetailMap map = DetailMap.of(16, columns, cells);
    for (int i = 0; i < 200; i++) {
      int left = random.nextInt(columns);
      int top = random.nextInt(rows);
      int right = left + 1 + random.nextInt(columns - left);
      int bottom = top + 1 + random.nextInt(rows - top);
      double sum = 0;
      for (int y = top; y < bottom; y++) {
        for (int x = left; x < right; x++) {
          sum += cells[y * columns + x];
        }
      }
      double mean = sum / ((right - left) * (bottom - top));
      Box box = Box.ofEdges(16.0 * left, 16.0 * top, 16.0 * right, 16.0 * bottom);
      assertEquals(mean, map.detail(box), 1e-9);
    }
  }

  @Test
  void outsideOfTheArtThereIsNothingToSee() {
    assertEquals(0, DetailMap.NONE.detail(new Box(0, 0, 500, 500)));
    DetailMap map = DetailMap.of(10, 2, new float[] {1, 1, 1, 1});
    assertEquals(0, map.detail(new Box(300, 300, 50, 50)));
    assertEquals(0, map.detail(new Box(-90, -90, 50, 50)));
    assertEquals(1, map.detail(new Box(-5, -5, 12, 12)));
  }

  @Test
  void aFlatPartIsCalmerThanABusyOne(@TempDir Path folder) throws Exception {
    Path file =
        Pages.write(
            Pages.page(800, 1600, BufferedImage.TYPE_3BYTE_BGR, 3), folder.resolve("01.png"));
    StripArt art = StripArt.of(new ArtFiles(List.of(file), List.of()), 800);
    DetailMap busy = DetailMap.of(StripRows.of(art));
    double whole = busy.detail(new Box(0, 0, 800, 1600));
    assertTrue(whole > 0.01 && whole < 1, "" + whole);
    BufferedImage calm = new BufferedImage(800, 800, BufferedImage.TYPE_3BYTE_BGR);
    Path flat = Pages.write(calm, folder.resolve("02.png"));
    StripArt both = StripArt.of(new ArtFiles(List.of(file, flat), List.of()), 800);
    DetailMap map = DetailMap.of(StripRows.of(both));
    assertEquals(0, map.detail(new Box(0, 1640, 800, 700)));
    assertEquals(whole, map.detail(new Box(0, 0, 800, 1600)), 0.05);
  }
}
