package io.github.readfall.export.transcript;

import java.util.List;

/**
 * A panel as it is read out. What is drawn is told in the script's language.
 *
 * @param number its place in the script, from 1
 * @param label its own number or name; empty where it has none, or the same
 * @param shot how it is seen and how it lies, in the words of {@link Vocabulary}
 * @param shotNote what else its heading says, in the script's language; may be empty
 * @param drawn what is in the picture; may be empty
 * @param lines what is lettered, in script order
 */
public record TranscribedPanel(
    int number,
    String label,
    List<String> shot,
    String shotNote,
    String drawn,
    List<TranscribedLine> lines) {

  public TranscribedPanel {
    shot = List.copyOf(shot);
    lines = List.copyOf(lines);
  }
}
