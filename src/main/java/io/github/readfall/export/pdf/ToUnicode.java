package io.github.readfall.export.pdf;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Maps each glyph of a face to its letters (ISO 32000-1, 9.10.3). */
final class ToUnicode {

  /** Text of a glyph that another one is for: a space without width. */
  static final String NOTHING = "\u200B";

  /** The most entries in one block (Adobe technical note 5411). */
  private static final int BLOCK = 100;

  private static final String HEAD =
      """
      /CIDInit /ProcSet findresource begin
      12 dict begin
      begincmap
      /CIDSystemInfo <</Registry (Adobe) /Ordering (UCS) /Supplement 0>> def
      /CMapName /Adobe-Identity-UCS def
      /CMapType 2 def
      1 begincodespacerange
      <0000> <FFFF>
      endcodespacerange
      """;
  private static final String FOOT =
      """
      endcmap
      CMapName currentdict /CMap defineresource pop
      end
      end
      """;

  private ToUnicode() {}

  /**
   * The map.
   *
   * @param saying text of each glyph, by its number in the file
   */
  static byte[] of(Map<Integer, String> saying) {
    StringBuilder out = new StringBuilder(HEAD);
    List<Map.Entry<Integer, String>> entries = new ArrayList<>(saying.entrySet());
    for (int from = 0; from < entries.size(); from += BLOCK) {
      List<Map.Entry<Integer, String>> block =
          entries.subList(from, Math.min(from + BLOCK, entries.size()));
      out.append(block.size()).append(" beginbfchar\n");
      block.forEach(entry -> entry(out, entry.getKey(), entry.getValue()));
      out.append("endbfchar\n");
    }
    return out.append(FOOT).toString().getBytes(StandardCharsets.US_ASCII);
  }

  private static void entry(StringBuilder out, int glyph, String text) {
    out.append('<');
    ContentWriter.hex(out, glyph, 4);
    out.append("> <");
    for (byte b : text.getBytes(StandardCharsets.UTF_16BE)) {
      ContentWriter.hex(out, b, 2);
    }
    out.append(">\n");
  }
}
