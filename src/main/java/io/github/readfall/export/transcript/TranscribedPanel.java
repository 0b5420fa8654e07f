package io.github.readfall.export.transcript;

import java.util.List;

/**
 * A panel as it is read aloud. The picture is described in the script's language.
 *
 * @param number its place in the script, from 1
 * @param label its own number or name; empty if it has none, or the same
 * @param shot its shot and shape, in the words of {@link Vocabulary}
 * @param shotNote the rest of its heading, in the script's language; may be empty
 * @param drawn the description of the picture; may be empty
 * @param lines its cues, in script order
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
