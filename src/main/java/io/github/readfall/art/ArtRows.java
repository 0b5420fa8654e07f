package io.github.readfall.art;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** A picture that is read row by row from the top, so that it is never wholly in memory. */
public interface ArtRows extends Closeable {

  /** Greatest width and height of a picture that is read. House defaults, no source. */
  int WIDEST_PX = 20_000;

  int TALLEST_PX = 1_000_000;

  /** Largest picture that is read, in pixels: more than any strip, less than a made-up size. */
  long LARGEST_PX = 1_600_000_000L;

  /** The width of the picture; positive. */
  int widthPx();

  /** The height of the picture; positive. */
  int heightPx();

  /**
   * Reads the next row.
   *
   * @param rgb receives red, green, blue from the left, over white if the picture is transparent;
   *     three times as long as the picture is wide
   * @throws UnreadableArt if the file is damaged or ends too early
   * @throws IllegalStateException if the picture has no more rows
   */
  void read(byte[] rgb) throws UnreadableArt;

  /** Closes the file. */
  @Override
  void close();

  /**
   * Opens a PNG or a JPEG, recognised by its first bytes. A JPEG that is stored turned or mirrored
   * is read upright.
   *
   * @throws UnreadableArt if it cannot be read
   */
  static ArtRows open(Path file) throws UnreadableArt {
    byte[] start = start(file);
    if (start.length > 3 && start[0] == (byte) 0x89 && start[1] == 'P' && start[2] == 'N') {
      return PngRows.open(file);
    }
    if (isJpeg(start)) {
      Orientation orientation = Orientation.of(file);
      ArtRows rows = JpegRows.open(file);
      return orientation == Orientation.UPRIGHT ? rows : TurnedRows.of(file, rows, orientation);
    }
    throw UnreadableReason.neither(file);
  }

  /**
   * Returns true if a file begins like a JPEG.
   *
   * @throws UnreadableArt if it cannot be read
   */
  static boolean isJpeg(Path file) throws UnreadableArt {
    return isJpeg(start(file));
  }

  private static boolean isJpeg(byte[] start) {
    return start.length > 3 && start[0] == (byte) 0xff && start[1] == (byte) 0xd8;
  }

  private static byte[] start(Path file) throws UnreadableArt {
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(8);
    } catch (IOException e) {
      throw UnreadableReason.closed(file);
    }
  }
}
