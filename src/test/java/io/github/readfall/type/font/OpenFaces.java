package io.github.readfall.type.font;

import java.nio.file.Path;
import java.util.List;

/** The bundled faces, for tests. */
public final class OpenFaces {

  static final Path FOLDER = Path.of("fonts-open");

  private OpenFaces() {}

  public static FontShelf shelf() throws FaceException {
    return FontShelf.bundled(FOLDER);
  }

  public static List<FaceFile> files() throws FaceException {
    return shelf().files();
  }

  /** The upright regular face of a family. */
  public static Face regular(String family) throws FaceException {
    FontShelf shelf = shelf();
    return shelf.open(shelf.find(family, 400, false).orElseThrow());
  }

  /** What the first glyph of a letter paints, upright. */
  static Ink ink(Face face, String letter) {
    return face.ink(face.shape(letter).glyph(0), 0);
  }
}
