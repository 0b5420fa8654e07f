package io.github.readfall.desk;

import io.github.readfall.script.Script;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.ReadTranslation;
import io.github.readfall.series.TranslationFile;
import io.github.readfall.series.UnusablePath;
import io.github.readfall.translate.TranslatedCue;
import io.github.readfall.translate.Translation;
import java.util.List;
import java.util.Map;

/**
 * The translations that lie beside a script.
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
        .map(ReadTranslation::translation)
        .orElseGet(() -> Translation.empty(language, script));
  }

  @Override
  public void save(String language, Script script, TranslatedCue changed) throws UnusablePath {
    TranslationFile file = TranslationFile.of(files, language);
    boolean unused =
        file.save(
            file.withTarget(script, changed.cue(), changed.target(), changed.state()).xliff());
  }
}
