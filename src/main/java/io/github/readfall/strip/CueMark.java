package io.github.readfall.strip;

import io.github.readfall.script.Cue;

/**
 * What a balloon of layout.json says, so that it is found again when the script changes.
 *
 * @param panel its place in the script when it was written, from 1
 * @param speaker who says it; a caption's or a sound effect's is that word
 * @param text the script's raw text, white space collapsed
 */
public record CueMark(int panel, String speaker, String text) {

  /** The mark of a cue as it stands in the script now. */
  public static CueMark of(Cue cue) {
    String text = String.join(" ", cue.text().raw().strip().split("\\s+"));
    return new CueMark(cue.panel(), cue.speaker(), text);
  }
}
