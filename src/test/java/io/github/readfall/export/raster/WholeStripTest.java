package io.github.readfall.export.raster;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import ar.com.hjg.pngj.ImageLineInt;
import ar.com.hjg.pngj.PngReader;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import io.github.readfall.Pixels;
import io.github.readfall.art.ArtFiles;
import io.github.readfall.art.StripArt;
import io.github.readfall.base.files.Batch;
import io.github.readfall.base.files.Cancelled;
import io.github.readfall.base.files.CannotWrite;
import io.github.readfall.base.files.Progress;
import io.github.readfall.draw.Mark;
import io.github.readfall.draw.render.Alike;
import io.github.readfall.draw.render.SvgWriter;
import io.github.readfall.lettering.style.Delivery;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The whole strip as PNG and SVG, over art and over white, seen by other programs. */
class WholeStripTest {

  private static final double METRES_AT_350_DPI = 13_780; // 350 / 0.0254, rounded
  private static final Galley GALLEY = Drawn.galley(Drawn.EVERY_MANNER);

  private final Path folder;

  WholeStripTest(@TempDir Path folder) {
    this.folder = folder;
  }

  /** A strip of every manner of speech over art. */
  private StripPicture overArt() throws IOException {
    return overArt(GALLEY);
  }

  /** A narrow strip of one balloon over art, for what has nothing to do with how it looks. */
  private StripPicture smallOverArt() throws IOException {
    Path episode = Files.createDirectories(folder.resolve("series/ep01"));
    Files.writeString(episode.resolveSibling("series.toml"), "[strip]\nwidth = 400\n");
    Files.writeString(episode.resolve("script.txt"), "PANEL 1\n\nILSE: It is counting again.\n");
    return overArt(Drawn.galley(episode));
  }

  /** Half as wide as the strip, so that it is scaled, and a JPEG that lies on it as it is. */
  private StripPicture overArt(Galley galley) throws IOException {
    int width = (int) galley.widthPx();
    Path art = Files.createDirectories(folder.resolve("art"));
    ImageIO.write(page(width / 2, width * 7 / 16), "png", art.resolve("1.png").toFile());
    ImageIO.write(page(width, width * 3 / 8), "jpg", art.resolve("2.jpg").toFile());
    return new StripPicture("ep01-en", galley, StripArt.of(ArtFiles.in(art), width));
  }

  private static BufferedImage page(int width, int height) {
    BufferedImage page = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = page.createGraphics();
    g.setPaint(new GradientPaint(0, 0, new Color(0x304878), width, height, new Color(0xd8a060)));
    g.fillRect(0, 0, width, height);
    g.dispose();
    return page;
  }

  private static byte[] only(Batch batch) throws Exception {
    Map<String, byte[]> files = Drawn.files(batch);
    assertEquals(batch.names(), List.copyOf(files.keySet()));
    return Drawn.file(files, batch.names().get(0));
  }

  private static byte[] svg(StripPicture strip) throws Exception {
    return only(new WholeSvg(strip, SvgWriter.Letters.OUTLINES));
  }

  @Test
  void theArtIsSeenUnderTheLetteringAndWhiteBelowIt() throws Exception {
    BufferedImage strip = Drawn.read(only(new WholePng(overArt())));
    assertEquals(2400, strip.getHeight());
    BufferedImage first = page(800, 700);
    for (int y = 0; y < 1400; y += 100) {
      int at = strip.getRGB(4, y);
      int art = first.getRGB(2, y / 2);
      assertTrue(Alike.farthest(at, art) <= 1, "row " + y);
    }
    assertEquals(0xFFFFFFFF, strip.getRGB(4, 2300));
  }

  @Test
  void tallerArtMakesATallerStrip() throws Exception {
    Path art = Files.createDirectories(folder.resolve("tall"));
    ImageIO.write(page(1600, 3000), "png", art.resolve("1.png").toFile());
    StripPicture strip = new StripPicture("e", GALLEY, StripArt.of(ArtFiles.in(art), 1600));
    assertEquals(3000, Drawn.read(only(new WholePng(strip))).getHeight());
    assertEquals(3000, PageEnds.of(strip).get(PageEnds.of(strip).size() - 1));
  }

  /** The other decoder is pngj. */
  @Test
  void anotherDecoderReadsTheSamePixelsAndTheResolution() throws Exception {
    byte[] png = only(new WholePng(Drawn.strip(GALLEY)));
    BufferedImage read = Drawn.read(png);
    int[] pixels = Pixels.of(read);
    PngReader reader = new PngReader(new ByteArrayInputStream(png));
    assertEquals(METRES_AT_350_DPI, reader.getMetadata().getDpi()[0] / 0.0254, 1);
    for (int y = 0; y < read.getHeight(); y++) {
      var line = (ImageLineInt) reader.readRow(y);
      for (int x = 0; x < read.getWidth(); x += 5) {
        int[] samples = line.getScanline();
        int rgb = samples[3 * x] << 16 | samples[3 * x + 1] << 8 | samples[3 * x + 2];
        if ((pixels[y * read.getWidth() + x] & 0xffffff) != rgb) {
          fail("the pixel at " + x + "," + y + " differs");
        }
      }
    }
    reader.end();
  }

  /** The independent renderer is JSVG. */
  @Test
  void svgInOneRendererLooksLikeThePng() throws Exception {
    StripPicture strip = overArt();
    BufferedImage png = Drawn.read(only(new WholePng(strip)));
    var document =
        new SVGLoader()
            .load(new ByteArrayInputStream(svg(strip)), null, LoaderContext.createDefault());
    assertNotNull(document);
    BufferedImage image =
        new BufferedImage(png.getWidth(), png.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    document.render(null, g);
    looksLike(png, image);
  }

  /** The independent renderer is librsvg. */
  @Test
  void svgInAnotherRendererLooksLikeThePng() throws Exception {
    StripPicture strip = overArt();
    Path svg = Files.write(folder.resolve("strip.svg"), svg(strip));
    looksLike(Drawn.read(only(new WholePng(strip))), byLibrsvg(svg));
  }

  private BufferedImage byLibrsvg(Path svg) throws Exception {
    assumeTrue(has("rsvg-convert"), "rsvg-convert is not installed (Debian: librsvg2-bin)");
    Path png = folder.resolve("seen.png");
    Process process =
        new ProcessBuilder("rsvg-convert", "--unlimited", svg.toString(), "-o", png.toString())
            .inheritIO()
            .start();
    assertTrue(process.waitFor(60, TimeUnit.SECONDS), "too slow");
    assertEquals(0, process.exitValue());
    return Alike.over(Color.WHITE, ImageIO.read(png.toFile()));
  }

  static boolean has(String program) throws InterruptedException {
    try {
      return new ProcessBuilder(program, "--version").start().waitFor() == 0;
    } catch (IOException e) {
      return false;
    }
  }

  private static void looksLike(BufferedImage png, BufferedImage other) {
    double difference = Alike.meanDifference(png, other);
    assertTrue(difference < 0.01, "mean difference " + difference);
    for (PlacedBalloon balloon : GALLEY.balloons()) {
      var inner = balloon.set().inner().movedBy(balloon.at().x(), balloon.at().y());
      Rectangle box =
          new Rectangle(
              (int) inner.x(), (int) inner.y(), (int) inner.width(), (int) inner.height());
      double shift = Alike.shiftPx(Alike.part(png, box), Alike.part(other, box));
      assertTrue(shift < 0.5, balloon.id() + " is shifted by " + shift);
    }
  }

  @Test
  void theSameStripHasTheSameBytes() throws Exception {
    StripPicture strip = smallOverArt();
    assertArrayEquals(only(new WholePng(strip)), only(new WholePng(strip)));
    assertArrayEquals(svg(strip), svg(strip));
  }

  @Test
  void withoutArtThePanelsAreFramed() {
    List<Mark> framed = Drawn.strip(GALLEY).marks();
    assertEquals(
        GALLEY.panels().size(), framed.stream().filter(Mark.Line.class::isInstance).count());
  }

  @Test
  void damagedArtIsSaidInASentence() throws Exception {
    StripPicture strip = smallOverArt();
    Path page = folder.resolve("art/1.png");
    byte[] whole = Files.readAllBytes(page);
    Files.write(page, Arrays.copyOf(whole, whole.length / 2));
    for (Batch batch : batches(strip)) {
      CannotWrite refused = assertThrows(CannotWrite.class, () -> Drawn.files(batch));
      assertTrue(refused.getMessage().contains("1.png is damaged"), refused.getMessage());
    }
  }

  private static List<Batch> batches(StripPicture strip) {
    return List.of(
        new WholePng(strip),
        new WholeSvg(strip, SvgWriter.Letters.OUTLINES),
        new LayerFiles(strip, SvgWriter.Letters.OUTLINES),
        new SliceFiles(strip, "s-", Delivery.DEFAULT));
  }

  @Test
  void aFullDiskIsPassedOnWhereverItIsMet() throws Exception {
    StripPicture strip = smallOverArt();
    for (Batch batch : batches(strip)) {
      long last =
          Drawn.files(batch).values().stream().mapToLong(file -> file.length).max().orElse(0);
      assertTrue(last > 5_000);
      for (long room : new long[] {0, 20, 5_000, last - 1}) {
        IOException full =
            assertThrows(
                IOException.class,
                () -> batch.writeTo(name -> new Full(room), Progress.UNWATCHED),
                batch + " " + room);
        assertEquals("No space left on device", full.getMessage());
      }
    }
  }

  /** A disk with little room. */
  private static final class Full extends OutputStream {
    private final long[] room;

    Full(long room) {
      this.room = new long[] {room};
    }

    @Override
    public void write(int b) throws IOException {
      if (room[0]-- <= 0) {
        throw new IOException("No space left on device");
      }
    }
  }

  @Test
  void workThatIsEndedEndsSoon() throws Exception {
    for (Batch batch : batches(smallOverArt())) {
      assertThrows(
          Cancelled.class,
          () ->
              batch.writeTo(
                  name -> OutputStream.nullOutputStream(),
                  (done, of) -> {
                    throw new Cancelled();
                  }));
    }
  }
}
