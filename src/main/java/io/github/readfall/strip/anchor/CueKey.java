package io.github.readfall.strip.anchor;

import io.github.readfall.script.Letters;
import io.github.readfall.strip.CueMark;

/**
 * A cue as it is looked for: case and white space do not count.
 *
 * @param speaker who says it
 * @param text its raw text
 */
record CueKey(String speaker, String text) {

  static CueKey of(CueMark mark) {
    return new CueKey(Letters.fold(mark.speaker()), Letters.fold(mark.text()));
  }
}
