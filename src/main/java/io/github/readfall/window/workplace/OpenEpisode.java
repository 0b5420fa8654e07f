package io.github.readfall.window.workplace;

import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.Surroundings;
import io.github.readfall.series.autosave.OpenText;
import java.nio.file.Path;
import java.util.List;

/**
 * An open episode.
 *
 * @param files of the episode
 * @param siblings all episodes of its series, itself among them, in order
 * @param kept its script, with autosave
 * @param layout its layout, with autosave
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

  /** Whether something in it is not saved. */
  boolean hasUnsaved() {
    return kept.hasUnsaved() || layout.hasUnsaved();
  }

  /** Closes it; unsaved changes are offered when it is opened again. */
  public void close() {
    kept.close();
    layout.close();
  }

  /** Closes it, and discards unsaved changes. */
  void closeAndDiscard() {
    kept.closeAndDrop();
    layout.closeAndDrop();
  }

  /** Whether a path of a script, an episode or a series means this episode. */
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
