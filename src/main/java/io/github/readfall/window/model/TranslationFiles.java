package io.github.readfall.window.model;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.languages.translate.TranslatedCue;
import io.github.readfall.languages.translate.Translation;
import io.github.readfall.script.Script;
import java.util.List;

/** Where the translations of an episode are kept. Not asked on the thread of the window. */
public interface TranslationFiles {

  /**
   * The languages there are translations into, as BCP 47 tags, in the order in which they are
   * offered.
   *
   * @throws UnusablePath where that cannot be found out
   */
  List<String> languages() throws UnusablePath;

  /**
   * What an episode says in one of them.
   *
   * @param script as it is now
   * @throws UnusablePath where it cannot be read; with a sentence that says so
   */
  public Translation read(String language, Script script) throws UnusablePath;

  /**
   * Saves one cue of a translation; whole or not at all.
   *
   * @param script as it is now
   * @param changed the cue with its new words
   * @throws UnusablePath where it cannot be saved; what was there is untouched
   */
  public void save(String language, Script script, TranslatedCue changed) throws UnusablePath;

  /** Of an episode that is not translated: no languages, and nothing to save into. */
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
        throw new UnusablePath("This episode has no translation into " + language + ".");
      }
    };
  }
}
