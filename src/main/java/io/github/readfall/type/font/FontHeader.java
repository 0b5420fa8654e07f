package io.github.readfall.type.font;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The few fields of a font file that AWT does not show (OpenType specification: table directory,
 * head, OS/2, name, maxp, GSUB).
 *
 * @param unitsPerEm design units in an em; positive
 * @param glyphCount number of glyphs; positive
 * @param embedding permission of the file
 * @param weight 100 to 900, 400 is regular
 * @param italic true if the file calls itself italic
 * @param names the name table by name id; 0 copyright, 1 family, 5 version, 13 licence, 16
 *     typographic family
 * @param contextual true if letters change shape with their neighbours ({@code calt}, {@code rclt}
 *     or {@code clig} features), so that word widths cannot be added up
 * @param localForms letters that some languages draw differently
 */
record FontHeader(
    int unitsPerEm,
    int glyphCount,
    Embedding embedding,
    int weight,
    boolean italic,
    Map<Integer, String> names,
    boolean contextual,
    LocalForms localForms) {

  private static final int TRUE_TYPE = 0x00010000;
  private static final int CFF = 0x4F54544F;
  private static final int COLLECTION = 0x74746366;
  private static final int OLD_MAC_TRUE_TYPE = 0x74727565;
  private static final Set<String> COLOUR = Set.of("COLR", "CBDT", "sbix", "SVG ");
  private static final Set<String> CONTEXTUAL = Set.of("calt", "rclt", "clig");
  private static final int LIGHTEST = 100;
  private static final int HEAVIEST = 900;
  private static final int MAX_BYTES = 64 << 20;

  FontHeader {
    names = Map.copyOf(names);
  }

  /**
   * Reads a file.
   *
   * @throws FaceException if it is no static TrueType or OpenType font, is damaged, or cannot be
   *     read
   */
  static FontHeader read(Path file) throws FaceException {
    try {
      if (Files.size(file) > MAX_BYTES) {
        throw new FaceException(file + " is larger than a font file should be (64 MiB).");
      }
      return new Reader(file, ByteBuffer.wrap(Files.readAllBytes(file))).header();
    } catch (IOException e) {
      throw new FaceException(file + " cannot be read: check that it is there and yours to read.");
    } catch (IndexOutOfBoundsException e) {
      throw new FaceException(file + " is damaged: it ends before its tables do.");
    }
  }

  /** The family a person knows the face by. */
  Optional<String> family() {
    return Optional.ofNullable(names.getOrDefault(16, names.get(1)));
  }

  /** One walk through one file; offsets outside it throw IndexOutOfBoundsException. */
  private static final class Reader {

    private final Path file;
    private final ByteBuffer bytes;
    private final Map<String, Integer> tables = new HashMap<>();

    Reader(Path file, ByteBuffer bytes) {
      this.file = file;
      this.bytes = bytes;
    }

    FontHeader header() throws FaceException {
      readDirectory();
      refuseWhatCannotBeSet();
      int head = table("head");
      int unitsPerEm = u16(head + 18);
      int glyphCount = u16(table("maxp") + 4);
      if (unitsPerEm < 16 || unitsPerEm > 16384 || glyphCount == 0) {
        throw new FaceException(file + " is damaged: it has no glyphs, or no size of its own.");
      }
      int os2 = table("OS/2");
      return new FontHeader(
          unitsPerEm,
          glyphCount,
          Embedding.of(u16(os2 + 8)),
          Math.max(LIGHTEST, Math.min(HEAVIEST, u16(os2 + 4))),
          (u16(os2 + 62) & 1) != 0,
          names(),
          tables.containsKey("GSUB") && isContextual(tables.get("GSUB")),
          tables.containsKey("GSUB")
              ? LocalForms.read(bytes, tables.get("GSUB"))
              : LocalForms.NONE);
    }

    private void readDirectory() throws FaceException {
      int kind = bytes.limit() < 12 ? 0 : bytes.getInt(0);
      if (kind == COLLECTION) {
        throw new FaceException(
            file + " is a font collection: take the single .ttf or .otf files out of it.");
      }
      if (kind != TRUE_TYPE && kind != CFF && kind != OLD_MAC_TRUE_TYPE) {
        throw new FaceException(file + " is not a TrueType or OpenType font.");
      }
      int count = u16(4);
      for (int i = 0; i < count; i++) {
        int entry = 12 + 16 * i;
        int offset = bytes.getInt(entry + 8);
        int length = bytes.getInt(entry + 12);
        if (offset < 0 || length < 0 || (long) offset + length > bytes.limit()) {
          throw new FaceException(file + " is damaged: it ends before its tables do.");
        }
        tables.put(latin1(entry, 4), offset);
      }
    }

    private void refuseWhatCannotBeSet() throws FaceException {
      if (tables.containsKey("fvar")) {
        throw new FaceException(
            file + " is a variable font: use the static file of the weight you want.");
      }
      if (tables.keySet().stream().anyMatch(COLOUR::contains)) {
        throw new FaceException(file + " is a colour font: lettering needs plain outlines.");
      }
    }

    private int table(String tag) throws FaceException {
      Integer offset = tables.get(tag);
      if (offset == null) {
        throw new FaceException(file + " is damaged: its " + tag + " table is missing.");
      }
      return offset;
    }

    private Map<Integer, String> names() throws FaceException {
      int name = table("name");
      int count = u16(name + 2);
      int storage = name + u16(name + 4);
      Map<Integer, String> found = new HashMap<>();
      for (int i = 0; i < count; i++) {
        int entry = name + 6 + 12 * i;
        boolean windowsEnglish = u16(entry) == 3 && u16(entry + 4) == 0x0409;
        if (windowsEnglish || u16(entry) == 1) {
          String text = text(u16(entry), storage + u16(entry + 10), u16(entry + 8));
          found.merge(u16(entry + 6), text, (old, fresh) -> windowsEnglish ? fresh : old);
        }
      }
      return found;
    }

    private String text(int platform, int offset, int length) {
      Charset charset = platform == 3 ? StandardCharsets.UTF_16BE : StandardCharsets.ISO_8859_1;
      return new String(slice(offset, length), charset);
    }

    private boolean isContextual(int gsub) {
      int features = gsub + u16(gsub + 6);
      Set<String> tags = new HashSet<>();
      for (int i = 0; i < u16(features); i++) {
        tags.add(latin1(features + 2 + 6 * i, 4));
      }
      return tags.stream().anyMatch(CONTEXTUAL::contains);
    }

    private int u16(int offset) {
      return Short.toUnsignedInt(bytes.getShort(offset));
    }

    private String latin1(int offset, int length) {
      return new String(slice(offset, length), StandardCharsets.ISO_8859_1);
    }

    private byte[] slice(int offset, int length) {
      if (offset < 0 || offset + length > bytes.limit()) {
        throw new IndexOutOfBoundsException(offset);
      }
      byte[] slice = new byte[length];
      bytes.get(offset, slice);
      return slice;
    }
  }
}
