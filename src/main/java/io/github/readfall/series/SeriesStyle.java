package io.github.readfall.series;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.lettering.style.ReadStyle;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

/** The house style that holds at a path, script or no script. */
public final class SeriesStyle {

  private SeriesStyle() {}

  /**
   * Reads the style of the series at or round a path; the built-in one if there is none.
   *
   * @param path a series folder, an episode folder or a script
   * @throws UnusablePath if there is nothing, or its series.toml cannot be read at all
   */
  public static ReadStyle at(Path path) throws UnusablePath {
    if (!Files.exists(path)) {
      throw new UnusablePath(
          "There is nothing at " + path + ": give a script, an episode folder or a series folder.");
    }
    return Surroundings.style(folder(path));
  }

  /** Returns true if a path is a series or is in one. */
  public static boolean isIn(Path path) {
    return folder(path).isPresent();
  }

  /** The folder with series.toml: the path itself, or one of the two above it. */
  private static Optional<Path> folder(Path path) {
    return Stream.iterate(
            Optional.of(path.toAbsolutePath().normalize()), at -> at.map(Path::getParent))
        .limit(3)
        .flatMap(Optional::stream)
        .filter(EpisodeFiles::hasStyle)
        .findFirst();
  }
}
