package io.github.readfall.languages.translate;

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

  /**
   * This cue with other words, written for what the script says now. Words where there were none
   * make it translated; where there are none any more it is as if nobody had begun.
   */
  public TranslatedCue saying(String words) {
    State next =
        words.isBlank() ? State.INITIAL : isTranslated() ? state : later(state, State.TRANSLATED);
    return new TranslatedCue(cue, words, next, Optional.empty());
  }

  private static State later(State one, State other) {
    return one.compareTo(other) > 0 ? one : other;
  }

  /** This cue when somebody says how far it has come as the script is now. */
  public TranslatedCue marked(State next) {
    return new TranslatedCue(cue, target, next, Optional.empty());
  }
}
