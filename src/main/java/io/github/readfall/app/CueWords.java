package io.github.readfall.app;

import io.github.readfall.script.Cue;
import io.github.readfall.wording.Wording;

/** Who says what, in one line. */
final class CueWords {

  private CueWords() {}

  /** The id, the speaker where there is one, and what is said. */
  static String of(Cue cue) {
    String said = cue.text().plain().replace('\n', ' ');
    return cue.speaker().isBlank()
        ? Wording.of("matrix.row.alone", cue.id(), said)
        : Wording.of("matrix.row", cue.id(), cue.speaker(), said);
  }
}
