package io.github.readfall.app;

import io.github.readfall.keeping.KeptScript;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.Surroundings;
import java.nio.file.Path;
import java.util.List;

/**
 * An episode that is open.
 *
 * @param files where it lies
 * @param siblings all episodes that can be chosen with it, itself among them, in their order
 * @param kept its script, kept as it is typed
 * @param surroundings as read when it was opened
 */
record Opened(
    EpisodeFiles files, List<EpisodeFiles> siblings, KeptScript kept, Surroundings surroundings) {

  Opened {
    siblings = List.copyOf(siblings);
  }

  /** Whether this is what is meant by the path of a script, an episode or a series. */
  boolean isAt(Path path) {
    Path script = plain(files.script());
    Path meant = plain(path);
    return script.equals(meant)
        || meant.equals(script.getParent())
        || files.seriesFolder().map(Opened::plain).filter(meant::equals).isPresent();
  }

  private static Path plain(Path path) {
    return path.toAbsolutePath().normalize();
  }
}
