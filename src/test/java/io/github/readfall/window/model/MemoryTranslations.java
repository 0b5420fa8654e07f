package io.github.readfall.window.model;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.languages.translate.TranslatedCue;
import io.github.readfall.languages.translate.Translation;
import io.github.readfall.script.Script;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Translations in memory, by language and cue. */
public final class MemoryTranslations implements TranslationFiles {

  private final Map<String, Map<String, String>> words = new TreeMap<>();
  private final Map<String, String> formerSources = new TreeMap<>();
  private final List<String> saved = new ArrayList<>();
  private boolean isFull;

  /** Adds the translation of a cue. */
  public MemoryTranslations say(String language, String cueId, String target) {
    words.computeIfAbsent(language, tag -> new TreeMap<>()).put(cueId, target);
    return this;
  }

  /** Sets the original that a cue was translated from, if it differs from the present one. */
  public MemoryTranslations stale(String cueId, String former) {
    formerSources.put(cueId, former);
    return this;
  }

  /** Makes saving impossible from now on, or possible again. */
  public void full(boolean isFullNow) {
    isFull = isFullNow;
  }

  /** The cues that were saved so far: language, cue and words of each. */
  public synchronized List<String> saved() {
    return List.copyOf(saved);
  }

  @Override
  public List<String> languages() {
    return List.copyOf(words.keySet());
  }

  @Override
  public synchronized Translation read(String language, Script script) {
    Map<String, String> said = words.getOrDefault(language, Map.of());
    return new Translation(
        language,
        script.cues().stream()
            .map(TranslatedCue::untranslated)
            .map(cue -> cue.saying(said.getOrDefault(cue.cue().id(), "")))
            .map(
                cue ->
                    new TranslatedCue(
                        cue.cue(),
                        cue.target(),
                        cue.state(),
                        Optional.ofNullable(formerSources.get(cue.cue().id()))))
            .toList());
  }

  @Override
  public synchronized void save(String language, Script script, TranslatedCue changed)
      throws UnusablePath {
    if (isFull) {
      throw new UnusablePath("The disk is full: make room.");
    }
    String cueId = changed.cue().id();
    String target = changed.target();
    say(language, cueId, target);
    formerSources.remove(cueId);
    saved.add(language + " " + cueId + " " + target);
  }
}
