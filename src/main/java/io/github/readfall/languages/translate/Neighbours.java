package io.github.readfall.languages.translate;

import io.github.readfall.script.Cue;
import io.github.readfall.script.Script;
import java.util.List;
import java.util.Optional;

/**
 * The cues before and after a cue, each with its speaker.
 *
 * @param before empty for the first cue
 * @param after empty for the last
 */
public record Neighbours(Optional<String> before, Optional<String> after) {

  /** The neighbours of a cue in its script. */
  public static Neighbours of(Cue cue, Script script) {
    List<Cue> cues = script.cues();
    int at = cues.stream().map(Cue::id).toList().indexOf(cue.id());
    return new Neighbours(said(cues, at - 1), said(cues, at + 1));
  }

  private static Optional<String> said(List<Cue> cues, int at) {
    return at < 0 || at >= cues.size()
        ? Optional.empty()
        : Optional.of(cues.get(at).names() + ": " + cues.get(at).text().plain().replace('\n', ' '));
  }
}
