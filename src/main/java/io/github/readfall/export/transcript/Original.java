package io.github.readfall.export.transcript;

import java.util.Set;

/**
 * The language in which the words of a strip were written before they were translated.
 *
 * @param language of the script, BCP 47
 * @param kept ids of the cues that are not translated, and keep the script's words
 */
public record Original(String language, Set<String> kept) {

  public Original {
    kept = Set.copyOf(kept);
  }
}
