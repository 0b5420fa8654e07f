package io.github.readfall.translate;

import io.github.readfall.script.Cue;
import java.util.Optional;

/**
 * One cue of the script and what it says in another language.
 *
 * @param cue of the script as it is now
 * @param target in the other language, with the script's markup; empty where there is nothing yet
 * @param state how far it has come
 * @param formerSource what the cue said when it was translated, with markup, where it says
 *     something else now: then the translation is stale
 */
public record TranslatedCue(Cue cue, String target, State state, Optional<String> formerSource) {

  /** A cue that nobody has translated. */
  public static TranslatedCue untranslated(Cue cue) {
    return new TranslatedCue(cue, "", State.INITIAL, Optional.empty());
  }

  /** Whether there are words in the other language. */
  public boolean isTranslated() {
    return !target.isBlank();
  }

  /** Whether the script has changed since it was translated. */
  public boolean isStale() {
    return formerSource.isPresent();
  }
}
