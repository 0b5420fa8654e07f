package io.github.readfall.strip.anchor;

import io.github.readfall.script.Letters;
import io.github.readfall.strip.CueMark;

/**
 * A cue as it is searched for, without regard to case and white space.
 *
 * @param speaker as in the script
 * @param text its raw text
 */
record CueKey(String speaker, String text) {

  static CueKey of(CueMark mark) {
    return new CueKey(Letters.fold(mark.speaker()), Letters.fold(mark.text()));
  }
}
