package io.github.readfall.rules.voice;

import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.strip.galley.Galley;
import java.util.ArrayList;
import java.util.List;

/**
 * One episode of a series, set.
 *
 * @param path of its script, as the person named it
 * @param galley its strip
 */
public record SeriesStrip(String path, Galley galley) {

  SetEpisode set() {
    return galley.set();
  }

  /** The episode in a sentence: its folder, else its script's path. */
  public String name() {
    List<String> parts = new ArrayList<>(List.of(path.replace('\\', '/').split("/", -1)));
    return parts.size() > 1 ? parts.get(parts.size() - 2) : path;
  }
}
