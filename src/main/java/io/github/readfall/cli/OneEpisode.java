package io.github.readfall.cli;

import io.github.readfall.script.LanguageTag;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.UnusablePath;
import java.nio.file.Path;
import java.util.List;

/** What a command on the languages of one episode is given. */
final class OneEpisode {

  private OneEpisode() {}

  static EpisodeFiles at(Path path, String command) throws CannotGoOn, UnusablePath {
    List<EpisodeFiles> episodes = EpisodeFiles.at(path);
    if (EpisodeFiles.isSeries(path)) {
      throw new CannotGoOn(command + " works on one episode: give the path of an episode.");
    }
    return episodes.get(0);
  }

  /** A language as it was typed, in its usual form. */
  static String language(String typed) throws CannotGoOn {
    return LanguageTag.tag(typed)
        .orElseThrow(
            () ->
                new CannotGoOn(
                    "--language " + typed + " is no language tag: write one such as de or pt-BR."));
  }
}
