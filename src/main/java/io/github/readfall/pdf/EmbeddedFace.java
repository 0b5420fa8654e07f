package io.github.readfall.pdf;

import io.github.readfall.text.PlacedRun;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** A face whose glyphs are in the document, by the numbers that they have in the font file. */
final class EmbeddedFace implements PdfFace {

  /** PDF measures glyphs in thousandths of the em. */
  static final double EM = 1000;

  private final String name;
  private final PDDocument document;
  private final TrueTypeFont file;
  private final PDType0Font font;
  private final TreeMap<Integer, String> saying = new TreeMap<>();
  private final TreeSet<Integer> shown = new TreeSet<>();

  /**
   * A face of a document.
   *
   * @param name of the face in the resources of every page
   */
  EmbeddedFace(String name, PDDocument document, TrueTypeFont file, PDType0Font font) {
    this.name = name;
    this.document = document;
    this.file = file;
    this.font = font;
  }

  String name() {
    return name;
  }

  PDType0Font font() {
    return font;
  }

  /** The way of the pen after a glyph as the document states it: in whole thousandths of the em. */
  double advance(int glyph) {
    try {
      return Math.round(file.getAdvanceWidth(glyph) * (float) EM / file.getUnitsPerEm());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Notes the glyphs of a run, and what they say. */
  void use(PlacedRun run) {
    for (Clusters.Cluster cluster : Clusters.of(run)) {
      cluster.glyphs().forEach(shown::add);
      cluster.glyphs().stream()
          .findFirst()
          .filter(glyph -> !cluster.text().isEmpty())
          .ifPresent(glyph -> saying.putIfAbsent(glyph, cluster.text()));
    }
  }

  /** Notes a glyph that says nothing by itself. */
  void use(int glyph) {
    shown.add(glyph);
  }

  @Override
  public void finish() throws IOException {
    if (font.willBeSubset()) {
      font.addGlyphsToSubset(shown);
      font.subset();
    }
    Map<Integer, String> all = new TreeMap<>(saying);
    shown.forEach(glyph -> all.putIfAbsent(glyph, ToUnicode.NOTHING));
    COSStream map = new PDStream(document).getCOSObject();
    try (var out = map.createOutputStream(COSName.FLATE_DECODE)) {
      out.write(ToUnicode.of(all));
    }
    font.getCOSObject().setItem(COSName.TO_UNICODE, map);
    file.close();
  }
}
