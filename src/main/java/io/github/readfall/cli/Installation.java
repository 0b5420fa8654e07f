package io.github.readfall.cli;

import io.github.readfall.font.FaceException;
import io.github.readfall.font.FontShelf;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Where the program's own files lie: above its jar, or above the classes of a build. */
final class Installation {

  private static final String FONTS = "fonts-open";

  private Installation() {}

  /** The bundled faces. */
  static FontShelf bundledFonts() throws CannotGoOn {
    try {
      return FontShelf.bundled(folder().resolve(FONTS));
    } catch (FaceException e) {
      throw new CannotGoOn(e.getMessage());
    }
  }

  /** The folder that holds the bundled faces. */
  static Path folder() throws CannotGoOn {
    for (Optional<Path> at = Optional.of(code()); at.isPresent(); at = above(at.get())) {
      if (Files.exists(at.get().resolve(FONTS).resolve("fonts.toml"))) {
        return at.get();
      }
    }
    throw new CannotGoOn(
        "The folder fonts-open is missing: keep it beside the folder lib, as it was unpacked.");
  }

  private static Optional<Path> above(Path path) {
    return Optional.ofNullable(path.getParent());
  }

  private static Path code() throws CannotGoOn {
    try {
      URI source = Installation.class.getProtectionDomain().getCodeSource().getLocation().toURI();
      return Path.of(source).toAbsolutePath();
    } catch (URISyntaxException e) {
      throw new CannotGoOn("The program's own folder has a name that cannot be used.");
    }
  }
}
