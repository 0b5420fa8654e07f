package io.github.readfall.window.model;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.languages.translate.TranslatedCue;
import io.github.readfall.languages.translate.Translation;
import io.github.readfall.script.Script;
import java.util.List;

/** The files of an episode's translations. Not used on the event thread. */
public interface TranslationFiles {

  /**
   * The languages of the translations, as BCP 47 tags, in the order in which they are offered.
   *
   * @throws UnusablePath if they cannot be listed
   */
  List<String> languages() throws UnusablePath;

  /**
   * Reads the translation into a language.
   *
   * @param script as it is now
   * @throws UnusablePath with a sentence, if it cannot be read
   */
  public Translation read(String language, Script script) throws UnusablePath;

  /**
   * Saves one cue of a translation; completely or not at all.
   *
   * @param script as it is now
   * @param changed the cue with its new words
   * @throws UnusablePath if it cannot be saved; the file is unchanged
   */
  public void save(String language, Script script, TranslatedCue changed) throws UnusablePath;

  /** The files of an episode without translations: no languages, and nothing can be saved. */
  static TranslationFiles none() {
    return new TranslationFiles() {
      @Override
      public List<String> languages() {
        return List.of();
      }

      @Override
      public Translation read(String language, Script script) {
        return Translation.empty(language, script);
      }

      @Override
      public void save(String language, Script script, TranslatedCue changed) throws UnusablePath {
        throw new UnusablePath(Wording.of("translation.noFile", language));
      }
    };
  }
}
