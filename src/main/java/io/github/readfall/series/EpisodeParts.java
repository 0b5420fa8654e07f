package io.github.readfall.series;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.script.Script;
import io.github.readfall.script.ScriptParts;
import java.nio.file.Path;
import java.util.List;

/**
 * The parts of an episode, ready to be written beside it.
 *
 * @param places of the parts, in script order
 * @param texts of their scripts, as many
 */
public record EpisodeParts(List<NewParts.Place> places, List<String> texts) {

  public EpisodeParts {
    places = List.copyOf(places);
    texts = List.copyOf(texts);
  }

  /**
   * The parts that begin with these panels.
   *
   * @param script of the episode
   * @param firstPanels number of each part's first panel, rising, the first of them 1
   * @throws UnusablePath if there are too few free places
   */
  public static EpisodeParts of(EpisodeFiles episode, Script script, List<Integer> firstPanels)
      throws UnusablePath {
    List<NewParts.Place> places = NewParts.places(episode, firstPanels.size());
    List<String> letters = places.stream().map(NewParts.Place::letter).toList();
    return new EpisodeParts(places, ScriptParts.of(script, firstPanels, letters));
  }

  /** The scripts that will be written. */
  public List<Path> scripts() {
    return places.stream().map(NewParts.Place::script).toList();
  }

  /**
   * Writes every part, or none.
   *
   * @throws UnusablePath if something is in the way by now, or cannot be written
   */
  public void write() throws UnusablePath {
    NewParts.write(places, texts);
  }
}
