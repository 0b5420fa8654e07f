package io.github.readfall.export.pdf;

import io.github.readfall.type.font.Face;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.apache.fontbox.ttf.OTFParser;
import org.apache.fontbox.ttf.OpenTypeFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.RandomAccessRead;
import org.apache.pdfbox.io.RandomAccessReadBufferedFile;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The faces of a document, each embedded as far as its file allows: the used letters alone, or all
 * of them, or none. That faces under the SIL Open Font License may be embedded in a document, whole
 * or in part and under their own names, is from its authors' list of questions (from memory).
 */
final class PdfFaces {

  /** Begins a file with CFF outlines (OpenType specification, table directory). */
  private static final String CFF = "OTTO";

  private final PDDocument document;

  /** Faces by file, in the order in which they were first used. */
  private final Map<Path, PdfFace> faces = new LinkedHashMap<>();

  private final TreeSet<String> outlined = new TreeSet<>();

  /** Names of the faces on every page. */
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

  /** A face; as outlines if its file does not allow more, or if the library cannot read it. */
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
    if (face.embedding().isAllowed()) {
      try {
        return embedded(face);
      } catch (IOException | RuntimeException e) {
        // a file that AWT can read may still trip the library, whose exception says nothing useful
      }
    }
    outlined.add(face.file().family());
    return new OutlinedFace();
  }

  private EmbeddedFace embedded(Face face) throws IOException {
    Path path = face.file().path();
    RandomAccessRead bytes = new RandomAccessReadBufferedFile(path.toString());
    TrueTypeFont file;
    FontProgram program;
    if (isCff(path)) {
      OpenTypeFont open = new OTFParser().parse(bytes);
      file = open;
      program = new FontProgram.Cff(open, new CffFont(document, open));
    } else {
      file = new TTFParser().parse(bytes);
      boolean part = face.embedding().subsetting();
      program = new FontProgram.TrueType(file, PDType0Font.load(document, file, part));
    }
    String name = "F" + (resources.size() + 1);
    resources.setItem(COSName.getPDFName(name), program.dictionary());
    return new EmbeddedFace(name, document, file, program);
  }

  private static boolean isCff(Path path) throws IOException {
    try (InputStream in = Files.newInputStream(path)) {
      byte[] start = in.readNBytes(CFF.length());
      return new String(start, StandardCharsets.ISO_8859_1).equals(CFF);
    }
  }

  /** Completes them all. */
  void finish() throws IOException {
    for (PdfFace face : faces.values()) {
      face.finish();
    }
  }
}
