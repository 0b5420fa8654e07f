package io.github.readfall.type.font;

import java.nio.file.Path;
import java.util.List;

/** The bundled faces, for tests. */
public final class OpenFaces {

  static final Path FOLDER = Path.of("fonts-open");

  private OpenFaces() {}

  /** The one shelf of all tests, since opening a face takes long. */
  public static FontShelf shelf() {
    return Holder.SHELF;
  }

  private static final class Holder {
    static final FontShelf SHELF = read();

    private static FontShelf read() {
      try {
        return FontShelf.bundled(FOLDER);
      } catch (FaceException e) {
        throw new AssertionError(e);
      }
    }
  }

  public static List<FaceFile> files() {
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
