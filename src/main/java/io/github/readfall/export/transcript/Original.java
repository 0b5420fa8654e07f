package io.github.readfall.export.transcript;

import java.util.Set;

/**
 * What the words of a strip were written in before they were translated.
 *
 * @param language of the script, BCP 47
 * @param kept ids of the cues that are not translated, and say what the script says
 */
public record Original(String language, Set<String> kept) {

  public Original {
    kept = Set.copyOf(kept);
  }
}
