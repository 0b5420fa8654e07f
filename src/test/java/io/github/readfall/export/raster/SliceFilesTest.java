package io.github.readfall.export.raster;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.files.CannotWrite;
import io.github.readfall.draw.render.Alike;
import io.github.readfall.lettering.style.Delivery;
import io.github.readfall.lettering.style.SliceFormat;
import io.github.readfall.lettering.typeset.SetLine;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class SliceFilesTest {

  private static final Galley GALLEY = Drawn.galley(Drawn.EVERY_MANNER);
  private static final int NO_LIMIT = 100_000_000;
  private static final BufferedImage UNCUT = uncut();

  private static SliceFiles slices(int width, int height, long bytes, SliceFormat format) {
    Delivery delivery = new Delivery(width, height, bytes, NO_LIMIT, format, 95);
    return new SliceFiles(Drawn.strip(GALLEY), "ep01-en-slice-", delivery);
  }

  private static BufferedImage uncut() {
    try {
      Map<String, byte[]> one = Drawn.files(slices(900, 20_000, NO_LIMIT, SliceFormat.PNG));
      assertEquals(1, one.size());
      return Drawn.read(Drawn.file(one, "ep01-en-slice-001.png"));
    } catch (Exception e) {
      throw new AssertionError(e);
    }
  }

  private static BufferedImage together(Map<String, byte[]> slices) throws Exception {
    BufferedImage all =
        new BufferedImage(UNCUT.getWidth(), UNCUT.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = all.createGraphics();
    int top = 0;
    for (byte[] file : slices.values()) {
      BufferedImage slice = Drawn.read(file);
      assertEquals(all.getWidth(), slice.getWidth());
      g.drawImage(slice, 0, top, null);
      top += slice.getHeight();
    }
    assertEquals(all.getHeight(), top);
    return all;
  }

  private static List<Integer> cuts(Map<String, byte[]> slices) throws Exception {
    List<Integer> cuts = new ArrayList<>();
    int top = 0;
    for (byte[] file : slices.values()) {
      top += Drawn.read(file).getHeight();
      cuts.add(top);
    }
    return cuts.subList(0, cuts.size() - 1);
  }

  /** Whether the row above a cut and the one below both show something of a balloon. */
  private static boolean isWithin(PlacedBalloon balloon, int cut) {
    double scale = 900 / GALLEY.widthPx();
    return balloon.reach().y() * scale < cut && cut < balloon.reach().bottom() * scale;
  }

  @Test
  void slicesPutTogetherAreTheScaledStripPixelForPixel() throws Exception {
    SliceFiles batch = slices(900, 500, NO_LIMIT, SliceFormat.PNG);
    Map<String, byte[]> slices = Drawn.files(batch);
    assertEquals(batch.names(), List.copyOf(slices.keySet()));
    assertEquals("ep01-en-slice-001.png", batch.names().get(0));
    assertTrue(slices.size() >= 3, slices.size() + " slices");
    assertEquals(0, Alike.farthest(UNCUT, together(slices)));
  }

  @Test
  void noSliceIsTooTallAndNoCutGoesThroughABalloon() throws Exception {
    Map<String, byte[]> slices = Drawn.files(slices(900, 500, NO_LIMIT, SliceFormat.PNG));
    for (byte[] file : slices.values()) {
      assertTrue(Drawn.read(file).getHeight() <= 500);
    }
    for (int cut : cuts(slices)) {
      for (PlacedBalloon balloon : GALLEY.balloons()) {
        assertFalse(isWithin(balloon, cut), "cut " + cut + " through " + balloon.id());
      }
    }
  }

  @Test
  void theScaledStripIsTheMeanOfWhatItsPixelsCover() throws Exception {
    Map<String, byte[]> half = Drawn.files(slices(800, 20_000, NO_LIMIT, SliceFormat.PNG));
    Map<String, byte[]> whole = Drawn.files(slices(1600, 20_000, NO_LIMIT, SliceFormat.PNG));
    BufferedImage small = Drawn.read(Drawn.file(half, "ep01-en-slice-001.png"));
    BufferedImage large = Drawn.read(Drawn.file(whole, "ep01-en-slice-001.png"));
    for (int y = 0; y < small.getHeight(); y += 7) {
      for (int x = 0; x < small.getWidth(); x += 3) {
        int sum = 0;
        for (int i = 0; i < 4; i++) {
          sum += large.getRGB(2 * x + i % 2, 2 * y + i / 2) & 0xff;
        }
        assertEquals(sum / 4.0, small.getRGB(x, y) & 0xff, 0.51, x + "," + y);
      }
    }
  }

  @Test
  void aSliceThatIsTooHeavyIsDividedBetweenBalloons() throws Exception {
    long limit = heaviest(Drawn.files(slices(900, 500, NO_LIMIT, SliceFormat.PNG)));
    Map<String, byte[]> lighter = Drawn.files(slices(900, 20_000, limit, SliceFormat.PNG));
    assertTrue(lighter.size() > 1);
    assertTrue(heaviest(lighter) <= limit);
    assertEquals(0, Alike.farthest(UNCUT, together(lighter)));
    for (int cut : cuts(lighter)) {
      assertTrue(GALLEY.balloons().stream().noneMatch(b -> isWithin(b, cut)), "cut " + cut);
    }
  }

  private static int heaviest(Map<String, byte[]> files) {
    return files.values().stream().mapToInt(file -> file.length).max().orElseThrow();
  }

  @Test
  void aJpegLosesQualityBeforeItIsDivided() throws Exception {
    Map<String, byte[]> fine = Drawn.files(slices(900, 500, NO_LIMIT, SliceFormat.JPEG));
    int limit = heaviest(fine) - 1;
    Map<String, byte[]> lighter = Drawn.files(slices(900, 500, limit, SliceFormat.JPEG));
    assertEquals(fine.keySet(), lighter.keySet());
    assertTrue(heaviest(lighter) <= limit);
    double difference = Alike.meanDifference(UNCUT, together(lighter));
    assertTrue(difference < 0.01, "difference " + difference);
  }

  /** JFIF 1.02: units 1 are dots per inch, in two bytes each. */
  @Test
  void aJpegStatesItsResolutionAndKeepsFullColour() throws Exception {
    byte[] jpeg =
        Drawn.file(
            Drawn.files(slices(900, 500, NO_LIMIT, SliceFormat.JPEG)), "ep01-en-slice-001.jpg");
    assertArrayEquals(
        new byte[] {1, (byte) (350 >> 8), (byte) 350, (byte) (350 >> 8), (byte) 350},
        Arrays.copyOfRange(jpeg, 13, 18));
    String latin = new String(jpeg, StandardCharsets.ISO_8859_1);
    int frame = latin.indexOf("\u00ff\u00c0");
    assertEquals(
        0x11, jpeg[frame + 11], "sampling of the first component (ISO/IEC 10918-1, B.2.2)");
  }

  @Test
  void whatCannotBeMadeLightEnoughIsSaidInASentence() {
    CannotWrite refused =
        assertThrows(CannotWrite.class, () -> Drawn.files(slices(900, 500, 300, SliceFormat.JPEG)));
    assertTrue(refused.getMessage().contains("raise max-slice-bytes"), refused.getMessage());
    assertTrue(refused.getMessage().endsWith("."), refused.getMessage());
  }

  @Test
  void aBalloonTallerThanASliceIsCutBetweenItsLinesAndThatIsSaid() throws Exception {
    SliceFiles batch = slices(900, 150, NO_LIMIT, SliceFormat.PNG);
    assertFalse(batch.notes().isEmpty());
    String all = String.join(" ", batch.notes());
    assertTrue(all.contains("balloon p1-3"), all);
    assertFalse(all.contains("midst of its words"), all);
    double scale = 900 / GALLEY.widthPx();
    for (int cut : cuts(Drawn.files(batch))) {
      for (PlacedBalloon balloon : GALLEY.balloons()) {
        for (SetLine line : balloon.set().lines()) {
          double baseline = (balloon.at().y() + line.baselinePx()) * scale;
          double top = baseline + line.line().box().top() * scale;
          double bottom = baseline + line.line().box().bottom() * scale;
          assertFalse(top + 1 < cut && cut < bottom - 1, "cut " + cut + " in " + balloon.id());
        }
      }
    }
  }

  @Test
  void slicesOfAnEarlierDrawingAreKnownByTheirNames() {
    SliceFiles batch = slices(900, 500, NO_LIMIT, SliceFormat.PNG);
    assertTrue(batch.isOutdated("ep01-en-slice-014.png"));
    assertTrue(batch.isOutdated("ep01-en-slice-1014.jpg"));
    assertFalse(batch.isOutdated("ep01-en-narrow-slice-014.png"));
    assertFalse(batch.isOutdated("ep01-de-slice-014.png"));
    assertFalse(batch.isOutdated("ep01-en-slice-014 copy.png"));
  }
}
