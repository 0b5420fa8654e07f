package io.github.readfall.languages.translate;

import io.github.readfall.script.CueText;
import io.github.readfall.script.MarkupReader;
import io.github.readfall.script.Script;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * An episode in another language.
 *
 * @param language a BCP 47 tag
 * @param cues one for every cue of the script, in its order
 */
public record Translation(String language, List<TranslatedCue> cues) {

  public Translation {
    cues = List.copyOf(cues);
  }

  /** An empty translation of a script. */
  public static Translation empty(String language, Script script) {
    return new Translation(
        language, script.cues().stream().map(TranslatedCue::untranslated).toList());
  }

  /** The cue with this id. */
  public Optional<TranslatedCue> cue(String id) {
    return cues.stream().filter(each -> each.cue().id().equals(id)).findFirst();
  }

  /** This translation with another of one cue, the one with the same id. */
  public Translation with(TranslatedCue other) {
    return new Translation(
        language,
        cues.stream()
            .map(each -> each.cue().id().equals(other.cue().id()) ? other : each)
            .toList());
  }

  /** This translation, with the words of another for cues that have none yet. */
  public Translation orElse(Translation other) {
    return new Translation(
        language,
        cues.stream()
            .map(each -> each.isTranslated() ? each : other.cue(each.cue().id()).orElse(each))
            .toList());
  }

  /**
   * The script in this language: untranslated cues keep their own words.
   *
   * @param source the script it translates
   */
  public Script of(Script source) {
    Map<String, CueText> targets =
        cues.stream()
            .filter(TranslatedCue::isTranslated)
            .collect(
                Collectors.toMap(
                    each -> each.cue().id(), each -> MarkupReader.text(each.target())));
    return source.inLanguage(language, cue -> targets.getOrDefault(cue.id(), cue.text()));
  }
}
