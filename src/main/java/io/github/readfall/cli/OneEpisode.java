package io.github.readfall.cli;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.script.lines.LanguageTag;
import io.github.readfall.series.EpisodeFiles;
import java.nio.file.Path;
import java.util.List;

/** The parameters of a command on the languages of one episode. */
final class OneEpisode {

  private OneEpisode() {}

  static EpisodeFiles at(Path path, String command) throws CannotProceed, UnusablePath {
    List<EpisodeFiles> episodes = EpisodeFiles.at(path);
    if (EpisodeFiles.isSeries(path)) {
      throw new CannotProceed(command + " works on one episode: give the path of an episode.");
    }
    return episodes.get(0);
  }

  /** A language as it was typed, in its usual form. */
  static String language(String typed) throws CannotProceed {
    return LanguageTag.tag(typed)
        .orElseThrow(
            () ->
                new CannotProceed(
                    "--language "
                        + typed
                        + " is not a language tag: write one such as de or pt-BR."));
  }
}
