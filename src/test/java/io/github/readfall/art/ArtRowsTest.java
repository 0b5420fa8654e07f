package io.github.readfall.art;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ar.com.hjg.pngj.ImageInfo;
import ar.com.hjg.pngj.ImageLineInt;
import ar.com.hjg.pngj.PngWriter;
import io.github.readfall.draw.render.Alike;
import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Iterator;
import java.util.SplittableRandom;
import java.util.zip.CRC32;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ArtRowsTest {

  private final Path folder;

  ArtRowsTest(@TempDir Path folder) {
    this.folder = folder;
  }

  private static BufferedImage read(Path file) throws UnreadableArt {
    try (ArtRows rows = ArtRows.open(file)) {
      BufferedImage image =
          new BufferedImage(rows.widthPx(), rows.heightPx(), BufferedImage.TYPE_INT_RGB);
      byte[] rgb = new byte[3 * rows.widthPx()];
      int[] pixels = new int[rows.widthPx()];
      for (int y = 0; y < rows.heightPx(); y++) {
        rows.read(rgb);
        for (int x = 0; x < pixels.length; x++) {
          pixels[x] =
              (rgb[3 * x] & 255) << 16 | (rgb[3 * x + 1] & 255) << 8 | (rgb[3 * x + 2] & 255);
        }
        image.getRaster().setDataElements(0, y, pixels.length, 1, pixels);
      }
      assertThrows(IllegalStateException.class, () -> rows.read(rgb), "a row too many");
      return image;
    }
  }

  @ParameterizedTest
  @ValueSource(
      ints = {
        BufferedImage.TYPE_INT_RGB,
        BufferedImage.TYPE_INT_ARGB,
        BufferedImage.TYPE_BYTE_INDEXED,
        BufferedImage.TYPE_BYTE_BINARY
      })
  void aPngIsReadAsTheJdkReadsItWhole(int type) throws Exception {
    Path file = Pages.write(Pages.page(97, 211, type, 5), folder.resolve("page.png"));
    assertEquals(0, Alike.farthest(Pages.decoded(file), read(file)));
  }

  @Test
  void aGreyJpegKeepsItsGreys() throws Exception {
    BufferedImage grey = new BufferedImage(64, 64, BufferedImage.TYPE_BYTE_GRAY);
    for (int y = 0; y < 64; y++) {
      for (int x = 0; x < 64; x++) {
        grey.getRaster().setSample(x, y, 0, 2 * (x + y));
      }
    }
    Path file = Pages.write(grey, folder.resolve("page.jpg"));
    BufferedImage read = read(file);
    for (int i = 0; i < 64; i++) {
      assertEquals(4.0 * i, read.getRGB(i, i) & 255, 6, "at " + i);
    }
  }

  @ParameterizedTest
  @CsvSource({"1, 1", "2, 3", "4, 15", "8, 255", "16, 65535"})
  void greysOfEveryDepthGoFromBlackToWhite(int bits, int most) throws Exception {
    Path file = folder.resolve("grey.png");
    ImageInfo info = new ImageInfo(2, 1, bits, false, true, false);
    write(file, info, 0, most);
    BufferedImage read = read(file);
    assertEquals(0xFF000000, read.getRGB(0, 0));
    assertEquals(0xFFFFFFFF, read.getRGB(1, 0));
  }

  @Test
  void sixteenBitsWithAlphaAreLaidOverWhite() throws Exception {
    Path file = folder.resolve("deep.png");
    ImageInfo info = new ImageInfo(3, 1, 16, true);
    int half = 0x8000;
    write(file, info, 0xffff, 0, 0, 0xffff, 0, 0, 0, 0, 0, 0, 0, half);
    BufferedImage read = read(file);
    assertEquals(0xFFFF0000, read.getRGB(0, 0), "opaque red");
    assertEquals(0xFFFFFFFF, read.getRGB(1, 0), "clear");
    assertEquals(127, read.getRGB(2, 0) & 255, 1.0, "half black");
  }

  private static void write(Path file, ImageInfo info, int... samples) {
    PngWriter writer = new PngWriter(file.toFile(), info);
    writer.writeRow(new ImageLineInt(info, samples), 0);
    writer.end();
  }

  @Test
  void aJpegOfSeveralBandsIsReadAsTheJdkReadsItWhole() throws Exception {
    BufferedImage page = Pages.page(1600, 9000, BufferedImage.TYPE_INT_RGB, 9);
    Path file = Pages.write(page, folder.resolve("page.jpg"));
    assertEquals(0, Alike.farthest(Pages.decoded(file), read(file)));
  }

  @Test
  void anInterlacedPngIsReadWhereItIsSmall() throws Exception {
    BufferedImage page = Pages.page(90, 70, BufferedImage.TYPE_INT_RGB, 3);
    Path file = folder.resolve("page.png");
    Iterator<ImageWriter> writers = ImageIO.getImageWritersByFormatName("png");
    ImageWriter writer = writers.next();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(file.toFile())) {
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setProgressiveMode(ImageWriteParam.MODE_DEFAULT);
      writer.setOutput(out);
      writer.write(null, new IIOImage(page, null, null), param);
    }
    assertEquals(1, Files.readAllBytes(file)[28], "the file is not interlaced");
    assertEquals(0, Alike.farthest(page, read(file)));
  }

  @Test
  void whatAFileIsItsFirstBytesSay() throws Exception {
    BufferedImage page = Pages.page(40, 30, BufferedImage.TYPE_INT_RGB, 2);
    Path png = Pages.write(page, folder.resolve("page.png"));
    Path named = Files.move(png, folder.resolve("page.jpg"));
    assertEquals(0, Alike.farthest(page, read(named)));
  }

  @Test
  void aFileThatIsNoPictureIsSaidInASentence() throws IOException {
    Path file = Files.writeString(folder.resolve("notes.png"), "Not a picture at all.");
    isRefused(file, "is not really a PNG or JPEG");
    isRefused(Files.createFile(folder.resolve("empty.png")), "is not really a PNG or JPEG");
    isRefused(folder.resolve("gone.png"), "cannot be opened");
  }

  @ParameterizedTest
  @ValueSource(strings = {"page.png", "page.jpg"})
  void aFileThatEndsTooEarlyIsNeverACrash(String name) throws Exception {
    BufferedImage page = Pages.page(200, 300, BufferedImage.TYPE_INT_RGB, 4);
    byte[] whole = Files.readAllBytes(Pages.write(page, folder.resolve("whole-" + name)));
    int refused = 0;
    for (int part = 0; part < 20; part++) {
      Path cut = folder.resolve(part + name);
      Files.write(cut, Arrays.copyOf(whole, part * whole.length / 20));
      try {
        read(cut);
      } catch (UnreadableArt e) {
        assertTrue(e.getMessage().contains(part + name), e.getMessage());
        refused++;
      }
    }
    assertEquals(20, refused, "of 20 refused");
  }

  @ParameterizedTest
  @ValueSource(strings = {"page.png", "page.jpg"})
  void aDamagedFileIsNeverACrash(String name) throws Exception {
    BufferedImage page = Pages.page(120, 90, BufferedImage.TYPE_INT_RGB, 4);
    byte[] whole = Files.readAllBytes(Pages.write(page, folder.resolve("whole-" + name)));
    SplittableRandom random = new SplittableRandom(17);
    int refused = 0;
    for (int i = 0; i < 200; i++) {
      byte[] damaged = whole.clone();
      for (int flips = 1 + random.nextInt(3); flips > 0; flips--) {
        damaged[8 + random.nextInt(damaged.length - 8)] ^= (byte) (1 << random.nextInt(8));
      }
      try {
        read(Files.write(folder.resolve(name), damaged));
      } catch (UnreadableArt e) {
        refused++;
      }
    }
    assertTrue(refused > 10, refused + " of 200 refused");
  }

  @Test
  void coloursForPrintAreRefusedWithAWayOn() throws IOException {
    WritableRaster four = Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, 32, 32, 4, null);
    Path file = folder.resolve("print.jpg");
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(file.toFile())) {
      writer.setOutput(out);
      writer.write(null, new IIOImage(four, null, null), null);
    }
    isRefused(file, "save it as RGB");
  }

  @Test
  void aMadeUpSizeIsRefusedBeforeAnythingIsReserved() throws IOException {
    isRefused(pngHead(2_000_000_000, 2_000_000_000), "more than Readfall reads");
    isRefused(pngHead(100, 1_000_001), "more than Readfall reads");
    isRefused(pngHead(20_000, 100_000), "more than Readfall reads");
  }

  /** The signature and IHDR of a PNG (PNG specification, third edition, 5.2, 11.2.1). */
  private Path pngHead(int width, int height) throws IOException {
    ByteArrayOutputStream header = new ByteArrayOutputStream();
    DataOutputStream data = new DataOutputStream(header);
    data.write("IHDR".getBytes(StandardCharsets.US_ASCII));
    data.writeInt(width);
    data.writeInt(height);
    data.write(new byte[] {8, 2, 0, 0, 0});
    CRC32 check = new CRC32();
    check.update(header.toByteArray());
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(file);
    out.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10});
    out.writeInt(13);
    out.write(header.toByteArray());
    out.writeInt((int) check.getValue());
    return Files.write(folder.resolve(width + "x" + height + ".png"), file.toByteArray());
  }

  private static void isRefused(Path file, String words) {
    UnreadableArt e = assertThrows(UnreadableArt.class, () -> ArtRows.open(file).close());
    assertTrue(e.getMessage().contains(words), e.getMessage());
    assertTrue(e.getMessage().contains(file.getFileName().toString()), e.getMessage());
    assertTrue(e.getMessage().endsWith("."), e.getMessage());
  }
}
