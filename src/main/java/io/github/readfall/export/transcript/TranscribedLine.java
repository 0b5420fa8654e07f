package io.github.readfall.export.transcript;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A cue as it is read out.
 *
 * @param id of the cue
 * @param who speaks, or what it is where nobody does
 * @param how it is spoken and what kind of balloon it has, in the words of {@link Vocabulary}
 * @param language of what is said, BCP 47
 * @param words what is said, from the first to the last
 */
public record TranscribedLine(
    String id, String who, List<String> how, String language, List<Words> words) {

  public TranscribedLine {
    how = List.copyOf(how);
    words = List.copyOf(words);
  }

  /** All that is said. */
  public String said() {
    return words.stream().map(Words::text).collect(Collectors.joining());
  }
}
