package io.github.readfall.cli;

import io.github.readfall.font.FaceException;
import io.github.readfall.font.FontShelf;
import io.github.readfall.series.UnusablePath;
import java.nio.file.Path;

/** The program's own files, for the command line. */
final class Installation {

  private Installation() {}

  /** The bundled faces. */
  static FontShelf bundledFonts() throws CannotGoOn {
    try {
      return FontShelf.bundled(folder().resolve(io.github.readfall.series.Installation.FONTS));
    } catch (FaceException e) {
      throw new CannotGoOn(e.getMessage());
    }
  }

  /** The folder that holds the bundled faces. */
  static Path folder() throws CannotGoOn {
    try {
      return io.github.readfall.series.Installation.folder();
    } catch (UnusablePath e) {
      throw new CannotGoOn(e.getMessage());
    }
  }
}
