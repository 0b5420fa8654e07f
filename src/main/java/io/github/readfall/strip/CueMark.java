package io.github.readfall.strip;

import io.github.readfall.script.Cue;
import java.util.List;

/**
 * The cue of a balloon in layout.json, by which the balloon is found again when the script changes.
 *
 * @param panel its place in the script when it was written, from 1
 * @param speaker as in the script, several as in {@link Cue#names}; for a caption or a sound
 *     effect, that word
 * @param text the script's raw text, white space collapsed
 */
public record CueMark(int panel, String speaker, String text) {

  /** The mark of a cue in the present script. */
  public static CueMark of(Cue cue) {
    String text = String.join(" ", cue.text().raw().strip().split("\\s+"));
    return new CueMark(cue.panel(), cue.names(), text);
  }

  /** The place of a speaker among those of the cue, from 0; -1 if it is not theirs. */
  public int placeOf(String name) {
    List<String> names = Cue.namesIn(speaker);
    int i = 0;
    while (i < names.size() && !names.get(i).equalsIgnoreCase(name)) {
      i++;
    }
    return i < names.size() ? i : -1;
  }
}
