package io.github.readfall.languages.translate;

import io.github.readfall.script.Cue;
import java.util.Optional;

/**
 * One cue of the script and its translation.
 *
 * @param cue of the present script
 * @param target in the other language, with the script's markup; empty if there is none yet
 * @param state of the translation
 * @param formerSource the cue's words when it was translated, with markup, if they have changed
 *     since: then the translation is stale
 */
public record TranslatedCue(Cue cue, String target, State state, Optional<String> formerSource) {

  /** A cue without a translation. */
  public static TranslatedCue untranslated(Cue cue) {
    return new TranslatedCue(cue, "", State.INITIAL, Optional.empty());
  }

  /** Returns true if there are words in the other language. */
  public boolean isTranslated() {
    return !target.isBlank();
  }

  /** Returns true if the script has changed since it was translated. */
  public boolean isStale() {
    return formerSource.isPresent();
  }

  /**
   * This cue with other words, written for the present script. The first words make it translated;
   * removing all words makes it untranslated.
   */
  public TranslatedCue saying(String words) {
    State next =
        words.isBlank() ? State.INITIAL : isTranslated() ? state : later(state, State.TRANSLATED);
    return new TranslatedCue(cue, words, next, Optional.empty());
  }

  private static State later(State one, State other) {
    return one.compareTo(other) > 0 ? one : other;
  }

  /** This cue with a state that somebody set for the present script. */
  public TranslatedCue marked(State next) {
    return new TranslatedCue(cue, target, next, Optional.empty());
  }
}
