package io.github.readfall.type.font;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A font file's bytes, to damage on purpose (OpenType specification, "Table Directory"). */
final class FontBytes {

  private final byte[] bytes;

  private FontBytes(byte[] bytes) {
    this.bytes = bytes;
  }

  static FontBytes of(Path file) throws IOException {
    return new FontBytes(Files.readAllBytes(file));
  }

  byte[] all() {
    return bytes.clone();
  }

  List<String> tables() {
    List<String> tags = new ArrayList<>();
    for (int i = 0; i < ByteBuffer.wrap(bytes).getShort(4); i++) {
      tags.add(new String(bytes, 12 + 16 * i, 4, StandardCharsets.ISO_8859_1));
    }
    return tags;
  }

  /** The same file with a 16-bit field of a table changed. */
  FontBytes with(String table, int offset, int value) {
    byte[] changed = all();
    int start = ByteBuffer.wrap(bytes).getInt(entry(table) + 8);
    ByteBuffer.wrap(changed).putShort(start + offset, (short) value);
    return new FontBytes(changed);
  }

  /** The same file with a table filled with one byte. */
  FontBytes wiped(String table, byte fill) {
    byte[] changed = all();
    ByteBuffer directory = ByteBuffer.wrap(bytes);
    int start = directory.getInt(entry(table) + 8);
    int length = directory.getInt(entry(table) + 12);
    Arrays.fill(changed, start, start + length, fill);
    return new FontBytes(changed);
  }

  /** The same file with a table's tag replaced by another. */
  FontBytes renamed(String table, String tag) {
    byte[] changed = all();
    System.arraycopy(tag.getBytes(StandardCharsets.ISO_8859_1), 0, changed, entry(table), 4);
    return new FontBytes(changed);
  }

  private int entry(String table) {
    return 12 + 16 * tables().indexOf(table);
  }
}
