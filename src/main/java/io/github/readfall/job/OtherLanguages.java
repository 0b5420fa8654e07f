package io.github.readfall.job;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.job.polyglot.Edition;
import io.github.readfall.series.Episode;
import io.github.readfall.series.EpisodeFiles;
import java.util.List;

/** The languages that an episode's balloons are to hold, beside its own. */
@FunctionalInterface
public interface OtherLanguages {

  /** None. */
  OtherLanguages NONE = (files, episode) -> List.of();

  /**
   * An episode in each of them.
   *
   * @param files of the episode
   * @param episode as read from them
   * @throws UnusablePath if a translation cannot be read at all
   */
  List<Edition> of(EpisodeFiles files, Episode episode) throws UnusablePath;
}
