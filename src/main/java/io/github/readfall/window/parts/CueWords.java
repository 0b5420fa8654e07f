package io.github.readfall.window.parts;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.script.Cue;

/** Who says what, in one line. */
public final class CueWords {

  private CueWords() {}

  /** The id, the speaker where there is one, and what is said. */
  public static String of(Cue cue) {
    String said = cue.text().plain().replace('\n', ' ');
    return cue.speaker().isBlank()
        ? Wording.of("matrix.row.alone", cue.id(), said)
        : Wording.of("matrix.row", cue.id(), cue.speaker(), said);
  }
}
