package io.github.readfall.pdf;

import io.github.readfall.font.Embedding;
import io.github.readfall.font.Face;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.RandomAccessReadBufferedFile;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The faces of a document, each embedded as far as its file allows: the used letters alone, or all
 * of them, or none.
 */
final class PdfFaces {

  private final PDDocument document;

  /** By file, in the order in which they were first used. */
  private final Map<Path, PdfFace> faces = new LinkedHashMap<>();

  private final List<String> outlined = new ArrayList<>();

  /** What every page calls its faces. */
  private final COSDictionary resources = new COSDictionary();

  PdfFaces(PDDocument document) {
    this.document = document;
  }

  COSDictionary resources() {
    return resources;
  }

  /** The families that are drawn as outlines, each once. */
  List<String> outlined() {
    return List.copyOf(outlined);
  }

  /**
   * A face.
   *
   * @throws UncheckedIOException where its file cannot be read any more
   */
  PdfFace of(Face face) {
    Path path = face.file().path();
    PdfFace known = faces.get(path);
    if (known == null) {
      known = put(face);
      faces.put(path, known);
    }
    return known;
  }

  private PdfFace put(Face face) {
    Embedding embedding = face.embedding();
    try {
      if (embedding.isAllowed()) {
        return embedded(face, embedding.subsetting());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    if (!outlined.contains(face.file().family())) {
      outlined.add(face.file().family());
    }
    return new OutlinedFace();
  }

  private EmbeddedFace embedded(Face face, boolean subsetting) throws IOException {
    TrueTypeFont file =
        new TTFParser().parse(new RandomAccessReadBufferedFile(face.file().path().toString()));
    PDType0Font font = PDType0Font.load(document, file, subsetting);
    String name = "F" + (resources.size() + 1);
    resources.setItem(COSName.getPDFName(name), font);
    return new EmbeddedFace(name, document, file, font);
  }

  /** Completes them all. */
  void finish() throws IOException {
    for (PdfFace face : faces.values()) {
      face.finish();
    }
  }
}
