package io.github.readfall.export.transcript;

import io.github.readfall.base.wording.Wording;
import java.util.List;

/**
 * An episode as it is read aloud, in script order.
 *
 * @param title of the series or episode; may be empty
 * @param episode its number as written; may be empty
 * @param language of its lines, BCP 47
 * @param writtenIn the language of the script, of titles, places and descriptions
 * @param scenes in order
 * @param asides sentences about the strip, such as where its reading order is another
 */
public record Transcript(
    String title,
    String episode,
    String language,
    String writtenIn,
    List<TranscribedScene> scenes,
    List<String> asides) {

  public Transcript {
    scenes = List.copyOf(scenes);
    asides = List.copyOf(asides);
  }

  /** Title and number, for example {@code The Long Ebb 3}. */
  public String name() {
    String name = (title + " " + episode).strip();
    return name.isEmpty() ? Wording.of("transcript.untitled") : name;
  }

  /** Every line, in script order. */
  public List<TranscribedLine> lines() {
    return scenes.stream()
        .flatMap(scene -> scene.panels().stream())
        .flatMap(panel -> panel.lines().stream())
        .toList();
  }
}
