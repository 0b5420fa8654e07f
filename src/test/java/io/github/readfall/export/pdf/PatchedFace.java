package io.github.readfall.export.pdf;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A font file with another field in it (OpenType specification: table directory, OS/2). */
final class PatchedFace {

  private static final int TABLES = 4;
  private static final int FIRST = 12;
  private static final int ENTRY = 16;
  private static final int FS_TYPE = 8;

  private PatchedFace() {}

  static byte[] withFsType(Path file, int fsType) throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(file));
    for (int i = 0; i < bytes.getShort(TABLES); i++) {
      int entry = FIRST + ENTRY * i;
      byte[] tag = new byte[4];
      bytes.get(entry, tag);
      if (new String(tag, StandardCharsets.ISO_8859_1).equals("OS/2")) {
        bytes.putShort(bytes.getInt(entry + 8) + FS_TYPE, (short) fsType);
      }
    }
    return bytes.array();
  }
}
