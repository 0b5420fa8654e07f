package io.github.readfall.window.model;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.languages.translate.TranslatedCue;
import io.github.readfall.languages.translate.Translation;
import io.github.readfall.languages.xliff.Matched;
import io.github.readfall.languages.xliff.Merge;
import io.github.readfall.languages.xliff.Refresh;
import io.github.readfall.languages.xml.XmlFault;
import io.github.readfall.script.Script;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.TranslationFile;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The translation files next to a script.
 *
 * @param files of the episode
 */
public record EpisodeTranslations(EpisodeFiles files) implements TranslationFiles {

  @Override
  public List<String> languages() throws UnusablePath {
    return files.languages();
  }

  @Override
  public Translation read(String language, Script script) throws UnusablePath {
    return TranslationFile.of(files, language)
        .read(script, Map.of())
        .map(
            read ->
                new Translation(
                    language,
                    read.translation().cues())) // the language is the one in the file's name
        .orElseGet(() -> Translation.empty(language, script));
  }

  @Override
  public void save(String language, Script script, TranslatedCue changed) throws UnusablePath {
    TranslationFile file = TranslationFile.of(files, language);
    try {
      Matched whole = Merge.of(file.orNew(script), Optional.empty(), Map.of());
      boolean unused =
          file.save(
              ofTheScriptNow(whole, language, changed)
                  .withTarget(changed.cue(), changed.target(), changed.state())
                  .xliff());
    } catch (XmlFault e) {
      throw new UnusablePath(e.in(file.path().toString()));
    }
  }

  /** The file with the present words of the script, if the cue was translated from others. */
  private static Matched ofTheScriptNow(Matched whole, String language, TranslatedCue changed)
      throws XmlFault {
    boolean isStale =
        whole
            .translation(language)
            .cue(changed.cue().id())
            .filter(TranslatedCue::isStale)
            .isPresent();
    return isStale ? Matched.of(Refresh.of(whole, language, Map.of()), whole.script()) : whole;
  }
}
