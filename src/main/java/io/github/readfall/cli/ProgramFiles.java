package io.github.readfall.cli;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.type.font.FaceException;
import io.github.readfall.type.font.FontShelf;
import java.nio.file.Path;

/** The program's own files, for the command line. */
final class ProgramFiles {

  private ProgramFiles() {}

  /** The bundled faces. */
  static FontShelf bundledFonts() throws CannotProceed {
    try {
      return FontShelf.bundled(folder().resolve(io.github.readfall.series.Installation.FONTS));
    } catch (FaceException e) {
      throw new CannotProceed(e.getMessage());
    }
  }

  /** The folder that holds the bundled faces. */
  static Path folder() throws CannotProceed {
    try {
      return io.github.readfall.series.Installation.folder();
    } catch (UnusablePath e) {
      throw new CannotProceed(e.getMessage());
    }
  }
}
