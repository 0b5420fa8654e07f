package io.github.readfall.app;

import io.github.readfall.keeping.KeptScript;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.Surroundings;
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
}
