package io.github.readfall.art;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** JPEGs that say how they are turned (CIPA DC-008 "Exif", 4.6.4 A, tag Orientation). */
class OrientationTest {

  private final Path folder;

  OrientationTest(@TempDir Path folder) {
    this.folder = folder;
  }

  /** Where the stored picture is red, green and blue: its corners, and black in the fourth. */
  private static BufferedImage corners(int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.RED);
    g.fillRect(0, 0, width / 2, height / 2);
    g.setColor(Color.GREEN);
    g.fillRect(width / 2, 0, width / 2, height / 2);
    g.setColor(Color.BLUE);
    g.fillRect(0, height / 2, width / 2, height / 2);
    g.dispose();
    return image;
  }

  private Path stored(BufferedImage image, int orientation, boolean bigEndian) throws IOException {
    byte[] jpeg = Files.readAllBytes(Pages.write(image, folder.resolve("plain.jpg")));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(jpeg, 0, 2);
    out.write(exif(orientation, bigEndian));
    out.write(jpeg, 2, jpeg.length - 2);
    return Files.write(folder.resolve("turned-" + orientation + ".jpg"), out.toByteArray());
  }

  /** An APP1 segment with a TIFF of one directory of two entries. */
  private static byte[] exif(int orientation, boolean bigEndian) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    out.writeShort(0xFFE1);
    out.writeShort(2 + 6 + 8 + 2 + 24 + 4);
    out.write("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
    out.write((bigEndian ? "MM" : "II").getBytes(StandardCharsets.US_ASCII));
    int[] shorts = {42};
    put(out, bigEndian, 2, shorts[0]);
    put(out, bigEndian, 4, 8);
    put(out, bigEndian, 2, 2);
    entry(out, bigEndian, 0x0100, 3, 40);
    entry(out, bigEndian, 0x0112, 3, orientation);
    put(out, bigEndian, 4, 0);
    return bytes.toByteArray();
  }

  private static void entry(DataOutputStream out, boolean bigEndian, int tag, int type, int value)
      throws IOException {
    put(out, bigEndian, 2, tag);
    put(out, bigEndian, 2, type);
    put(out, bigEndian, 4, 1);
    put(out, bigEndian, 2, value);
    put(out, bigEndian, 2, 0);
  }

  private static void put(DataOutputStream out, boolean bigEndian, int bytes, int value)
      throws IOException {
    for (int i = 0; i < bytes; i++) {
      out.writeByte(value >> 8 * (bigEndian ? bytes - 1 - i : i));
    }
  }

  /**
   * The corners as they are seen, from the upper left by rows; R, G, B and K. From the table of the
   * tag: "The 0th row represents the visual top of the image, and the 0th column represents the
   * visual left-hand side" for 1, and so on.
   */
  @ParameterizedTest
  @CsvSource({
    "1, RGBK", "2, GRKB", "3, KBGR", "4, BKRG", "5, RBGK", "6, BRKG", "7, KGBR", "8, GKRB"
  })
  void aTurnedJpegIsSeenUpright(int orientation, String corners) throws Exception {
    Path file = stored(corners(64, 32), orientation, orientation % 2 == 0);
    try (ArtRows rows = ArtRows.open(file)) {
      assertEquals(orientation < 5 ? 64 : 32, rows.widthPx());
      assertEquals(orientation < 5 ? 32 : 64, rows.heightPx());
      StringBuilder seen = new StringBuilder();
      byte[] rgb = new byte[3 * rows.widthPx()];
      for (int y = 0; y < rows.heightPx(); y++) {
        rows.read(rgb);
        if (y == rows.heightPx() / 4 || y == 3 * rows.heightPx() / 4) {
          seen.append(name(rgb, rows.widthPx() / 4)).append(name(rgb, 3 * rows.widthPx() / 4));
        }
      }
      assertEquals(corners, seen.toString());
    }
  }

  private static char name(byte[] rgb, int x) {
    for (int channel = 0; channel < 3; channel++) {
      if ((rgb[3 * x + channel] & 0xff) > 128) {
        return "RGB".charAt(channel);
      }
    }
    return 'K';
  }

  @Test
  void aLargeOneIsRefusedWithAWayOn() throws Exception {
    Path file = stored(corners(5000, 5000), 6, true);
    UnreadableArt refused = assertThrows(UnreadableArt.class, () -> ArtRows.open(file).close());
    assertTrue(refused.getMessage().contains("save it upright"), refused.getMessage());
  }

  @Test
  void whatCannotBeUnderstoodIsTakenAsUpright() throws Exception {
    assertEquals(Orientation.UPRIGHT, Orientation.of(stored(corners(64, 32), 9, true)));
    assertEquals(Orientation.UPRIGHT, Orientation.of(stored(corners(64, 32), 0, false)));
    byte[] whole = Files.readAllBytes(stored(corners(64, 32), 6, true));
    for (int length = 2; length < 64; length++) {
      Path cut = Files.write(folder.resolve("cut.jpg"), java.util.Arrays.copyOf(whole, length));
      Orientation of = Orientation.of(cut);
      assertTrue(of == Orientation.UPRIGHT || of == Orientation.TURN_RIGHT, "at " + length);
    }
  }
}
