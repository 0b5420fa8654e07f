package io.github.readfall.export.phone;

import io.github.readfall.base.geom.Path;
import io.github.readfall.export.html.Element;
import io.github.readfall.type.font.Face;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Outlines that a page draws more than once and describes once: each glyph, and each balloon, which
 * is the same in every language.
 */
final class Symbols {

  private final Map<Glyph, String> glyphs = new LinkedHashMap<>();
  private final Map<String, String> outlines = new LinkedHashMap<>();

  private record Glyph(Face face, int number, double slantDeg) {}

  /**
   * The id of a glyph's outline in design units, y downwards; empty if it has no ink.
   *
   * @param number in the font file
   */
  String glyph(Face face, int number, double slantDeg) {
    return glyphs.computeIfAbsent(
        new Glyph(face, number, slantDeg),
        glyph -> {
          String d = ShortPath.of(face.outline(number, slantDeg), 0);
          return d.isEmpty() ? "" : id(d);
        });
  }

  /** The id of an outline in strip pixels, to a tenth. */
  String outline(Path path) {
    return id(ShortPath.of(path.toShape(), 1));
  }

  private String id(String d) {
    return outlines.computeIfAbsent(d, path -> "s" + outlines.size());
  }

  /** All of them, in an image that is not seen. */
  Element defs() {
    Element defs =
        Element.of("defs")
            .holding(
                outlines.entrySet().stream()
                    .map(e -> Element.of("path").with("id", e.getValue()).with("d", e.getKey()))
                    .toList());
    return Element.of("svg")
        .as("symbols")
        .with("width", "0")
        .with("height", "0")
        .with("aria-hidden", "true")
        .holding(defs);
  }
}
