package io.github.readfall.art;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * How a picture is stored relative to how it is seen (CIPA DC-008 "Exif", 4.6.4 A, tag
 * Orientation): the constants are in the order of its values, from 1.
 */
enum Orientation {
  UPRIGHT,
  MIRRORED,
  UPSIDE_DOWN,
  MIRRORED_UPSIDE_DOWN,
  TRANSPOSED,
  TURN_RIGHT,
  TRANSPOSED_UPSIDE_DOWN,
  TURN_LEFT;

  private static final int APP1 = 0xFFE1;
  private static final int START_OF_SCAN = 0xFFDA;
  private static final int END = 0xFFD9;
  private static final int TAG = 0x0112;
  private static final int SHORT = 3;
  private static final int ENTRY_BYTES = 12;
  private static final int FIRST_ENTRY_AT = 4;
  private static final String EXIF = "Exif\0\0";

  /** Returns true if width and height are swapped. */
  boolean swapsSides() {
    return switch (this) {
      case UPRIGHT, MIRRORED, UPSIDE_DOWN, MIRRORED_UPSIDE_DOWN -> false;
      case TRANSPOSED, TURN_RIGHT, TRANSPOSED_UPSIDE_DOWN, TURN_LEFT -> true;
    };
  }

  /**
   * The orientation of a JPEG; {@link #UPRIGHT} if it has none that can be understood.
   *
   * @throws UnreadableArt if the file cannot be opened
   */
  static Orientation of(Path jpeg) throws UnreadableArt {
    try (DataInputStream in =
        new DataInputStream(new BufferedInputStream(Files.newInputStream(jpeg)))) {
      in.readUnsignedShort(); // start of image
      int marker = in.readUnsignedShort();
      while (marker >>> 8 == 0xFF && marker != START_OF_SCAN && marker != END) {
        byte[] segment = in.readNBytes(Math.max(0, in.readUnsignedShort() - Short.BYTES));
        if (marker == APP1 && isExif(segment)) {
          return in(ByteBuffer.wrap(segment, EXIF.length(), segment.length - EXIF.length()));
        }
        marker = in.readUnsignedShort();
      }
      return UPRIGHT;
    } catch (EOFException e) {
      return UPRIGHT; // its decoder reports that it ends too early
    } catch (IOException e) {
      throw UnreadableReason.closed(jpeg);
    }
  }

  private static boolean isExif(byte[] segment) {
    return new String(segment, StandardCharsets.ISO_8859_1).startsWith(EXIF);
  }

  /** Reads the first directory of a TIFF. */
  private static Orientation in(ByteBuffer exif) {
    ByteBuffer tiff = exif.slice();
    if (tiff.remaining() < 8) {
      return UPRIGHT;
    }
    tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    int at = tiff.getInt(FIRST_ENTRY_AT);
    if (at < 8 || at > tiff.limit() - Short.BYTES) {
      return UPRIGHT;
    }
    int entries = Short.toUnsignedInt(tiff.getShort(at));
    for (int entry = at + Short.BYTES;
        entries > 0 && entry <= tiff.limit() - ENTRY_BYTES;
        entry += ENTRY_BYTES, entries--) {
      if (tiff.getShort(entry) == TAG && tiff.getShort(entry + 2) == SHORT) {
        int value = Short.toUnsignedInt(tiff.getShort(entry + 8));
        return value >= 1 && value <= values().length ? values()[value - 1] : UPRIGHT;
      }
    }
    return UPRIGHT;
  }
}
