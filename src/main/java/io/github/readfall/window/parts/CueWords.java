package io.github.readfall.window.parts;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.script.Cue;

/** A cue in one line. */
public final class CueWords {

  private CueWords() {}

  /** The speaker, if there is one, and the text: {@code Mara: Not today.} */
  public static String of(Cue cue) {
    String said = cue.text().plain().replace('\n', ' ');
    return cue.speaker().isBlank() ? said : Wording.of("matrix.row", cue.names(), said);
  }
}
