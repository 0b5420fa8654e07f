package io.github.readfall.export.transcript;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A cue as it is read aloud.
 *
 * @param id of the cue
 * @param who speaks, or the kind of cue if nobody does
 * @param how its manners and kind of balloon, in the words of {@link Vocabulary}
 * @param language of its words, BCP 47
 * @param words from the first to the last
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
