package io.github.readfall.series;

import io.github.readfall.base.files.UnusablePath;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Finds the program's own files: above its jar, or above the classes of a build. */
public final class Installation {

  /** The folder with the bundled faces. */
  public static final String FONTS = "fonts-open";

  private static final Path SAMPLE = Path.of("sample-scripts", "overdue-tide");

  private Installation() {}

  /**
   * The folder that holds the bundled faces.
   *
   * @throws UnusablePath where it is not as it was unpacked
   */
  public static Path folder() throws UnusablePath {
    for (Optional<Path> at = Optional.of(code()); at.isPresent(); at = above(at.get())) {
      if (Files.exists(at.get().resolve(FONTS).resolve("fonts.toml"))) {
        return at.get();
      }
    }
    throw new UnusablePath(
        "The folder fonts-open is missing: keep it beside the folder lib, as it was unpacked.");
  }

  /**
   * The series that comes with the program.
   *
   * @throws UnusablePath where it is missing
   */
  public static Path sample() throws UnusablePath {
    Path sample = folder().resolve(SAMPLE);
    if (!Files.isDirectory(sample)) {
      throw new UnusablePath("The folder " + sample + " is missing: unpack the program once more.");
    }
    return sample;
  }

  private static Optional<Path> above(Path path) {
    return Optional.ofNullable(path.getParent());
  }

  private static Path code() throws UnusablePath {
    try {
      URI source = Installation.class.getProtectionDomain().getCodeSource().getLocation().toURI();
      return Path.of(source).toAbsolutePath();
    } catch (URISyntaxException e) {
      throw new UnusablePath("The program's own folder has a name that cannot be used.");
    }
  }
}
