package io.github.readfall.export.pdf;

import io.github.readfall.type.text.PlacedRun;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDStream;

/** A face whose glyphs are in the document. */
final class EmbeddedFace implements PdfFace {

  /** PDF measures glyphs in thousandths of the em. */
  static final double EM = 1000;

  private final String name;
  private final PDDocument document;
  private final TrueTypeFont file;
  private final FontProgram program;
  private final TreeMap<Integer, String> saying = new TreeMap<>();
  private final TreeSet<Integer> shown = new TreeSet<>();

  /**
   * A face of a document.
   *
   * @param name of the face in the resources of every page
   */
  EmbeddedFace(String name, PDDocument document, TrueTypeFont file, FontProgram program) {
    this.name = name;
    this.document = document;
    this.file = file;
    this.program = program;
  }

  String name() {
    return name;
  }

  /** The code of a glyph in the text. */
  int code(int glyph) {
    return program.code(glyph);
  }

  /** The way of the pen after a glyph as the document states it: in whole thousandths of the em. */
  double advance(int glyph) {
    return program.advance(glyph);
  }

  /** Notes the glyphs of a run, and their text. */
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
    try {
      program.finish(shown);
    } catch (IOException e) {
      throw new UncheckedIOException(e); // of the face, not of the disk
    }
    Map<Integer, String> all = new TreeMap<>();
    shown.forEach(glyph -> all.put(code(glyph), saying.getOrDefault(glyph, ToUnicode.NOTHING)));
    COSStream map = new PDStream(document).getCOSObject();
    try (OutputStream out = map.createOutputStream(COSName.FLATE_DECODE)) {
      out.write(ToUnicode.of(all));
    }
    program.dictionary().setItem(COSName.TO_UNICODE, map);
    file.close();
  }
}
