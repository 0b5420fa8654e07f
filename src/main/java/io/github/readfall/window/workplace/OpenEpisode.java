package io.github.readfall.window.workplace;

import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.Surroundings;
import io.github.readfall.series.autosave.OpenText;
import java.nio.file.Path;
import java.util.List;

/**
 * An episode that is open.
 *
 * @param files where it lies
 * @param siblings all episodes that can be chosen with it, itself among them, in their order
 * @param kept its script, kept as it is typed
 * @param layout its layout, kept as it is worked on
 * @param surroundings as read when it was opened
 */
public record OpenEpisode(
    EpisodeFiles files,
    List<EpisodeFiles> siblings,
    OpenText kept,
    OpenText layout,
    Surroundings surroundings) {

  public OpenEpisode {
    siblings = List.copyOf(siblings);
  }

  /** Whether something of it is not saved. */
  boolean hasUnsaved() {
    return kept.hasUnsaved() || layout.hasUnsaved();
  }

  /** Closes it; what is not saved is offered when it is opened again. */
  public void close() {
    kept.close();
    layout.close();
  }

  /** Closes it, and drops what is not saved. */
  void closeAndDrop() {
    kept.closeAndDrop();
    layout.closeAndDrop();
  }

  /** Whether this is what is meant by the path of a script, an episode or a series. */
  boolean isAt(Path path) {
    Path script = plain(files.script());
    Path meant = plain(path);
    return script.equals(meant)
        || meant.equals(script.getParent())
        || files.seriesFolder().map(OpenEpisode::plain).filter(meant::equals).isPresent();
  }

  private static Path plain(Path path) {
    return path.toAbsolutePath().normalize();
  }
}
