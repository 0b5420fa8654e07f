package io.github.readfall.window.workplace;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.script.read.ScriptFileException;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.LayoutFile;
import io.github.readfall.series.Surroundings;
import io.github.readfall.series.autosave.OpenText;
import io.github.readfall.series.autosave.Scheduler;
import io.github.readfall.series.autosave.SideFileLocks;
import io.github.readfall.type.font.FontShelf;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Opens episodes; not on the event thread, because disks may be slow.
 *
 * @param faces bundled with the program
 * @param claims of this process on side files
 * @param later the thread that autosaves
 * @param problems called with autosave problems
 */
public record EpisodeOpener(
    FontShelf faces, SideFileLocks claims, Scheduler later, Consumer<String> problems) {

  /**
   * Opens the episode at a path; of a series the preferred one, else its first.
   *
   * @param path of a script, an episode or a series
   * @param preferred the script that was open last
   * @throws UnusablePath if it cannot be read
   */
  OpenEpisode at(Path path, Optional<Path> preferred) throws UnusablePath {
    List<EpisodeFiles> found = EpisodeFiles.at(path);
    EpisodeFiles files =
        found.stream()
            .filter(one -> preferred.filter(one.script()::equals).isPresent())
            .findFirst()
            .orElse(found.get(0));
    return episode(files);
  }

  /** Opens an episode. */
  public OpenEpisode episode(EpisodeFiles files) throws UnusablePath {
    try {
      Surroundings around = Surroundings.read(files, faces);
      OpenText kept = OpenText.open(files.script(), claims, later, problems);
      return new OpenEpisode(files, files.withSiblings(), kept, layout(files, kept), around);
    } catch (ScriptFileException e) {
      throw new UnusablePath(String.valueOf(e.getMessage()));
    }
  }

  private OpenText layout(EpisodeFiles files, OpenText script) throws ScriptFileException {
    try {
      return OpenText.open(LayoutFile.of(files), claims, later, problems);
    } catch (ScriptFileException e) {
      script.close();
      throw e;
    }
  }
}
