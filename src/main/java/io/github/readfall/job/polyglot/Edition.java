package io.github.readfall.job.polyglot;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.languages.translate.TranslatedCue;
import io.github.readfall.languages.translate.Translation;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.script.Script;
import io.github.readfall.series.Episode;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * An episode in one language, ready to be set.
 *
 * @param translation its words; for the script's own language, the script's
 * @param script with those words; its cues have the ids of the script they translate
 * @param typesetter that sets it
 * @param expected ids of cues whose words are a stand-in of the expected length
 * @param findings about the file of its translation
 */
public record Edition(
    Translation translation,
    Script script,
    Typesetter typesetter,
    Set<String> expected,
    List<Finding> findings) {

  public Edition {
    expected = Set.copyOf(expected);
    findings = List.copyOf(findings);
  }

  /** The episode as it was written. */
  public static Edition original(Episode episode) {
    Script script = episode.script();
    return new Edition(
        Translation.empty(script.language(), script),
        script,
        new Typesetter(episode.shelf(), episode.style()),
        Set.of(),
        List.of());
  }

  /** The episode in a translation; untranslated cues keep their own words. */
  public static Edition of(Episode episode, Translation translation) {
    return of(episode, translation, translation, Set.of());
  }

  /**
   * The episode in a translation.
   *
   * @param standIn words for untranslated cues, in the same language
   */
  public static Edition of(Episode episode, Translation translation, Translation standIn) {
    Set<String> expected =
        translation.cues().stream()
            .filter(cue -> !cue.isTranslated())
            .map(cue -> cue.cue().id())
            .filter(id -> standIn.cue(id).filter(TranslatedCue::isTranslated).isPresent())
            .collect(Collectors.toSet());
    Translation filled = translation.orElse(standIn);
    return of(episode, translation, filled, expected);
  }

  private static Edition of(
      Episode episode, Translation translation, Translation words, Set<String> expected) {
    HouseStyle style = episode.styleIn(translation.language());
    return new Edition(
        translation,
        words.of(episode.script()),
        new Typesetter(episode.shelf(), style),
        expected,
        List.of());
  }

  /** The same edition with findings about its file. */
  public Edition with(List<Finding> found) {
    return new Edition(translation, script, typesetter, expected, found);
  }

  /**
   * The same edition with other words, set in the same faces.
   *
   * @param other translation into its language
   * @param source the script it translates
   */
  public Edition saying(Translation other, Script source) {
    Set<String> still =
        expected.stream()
            .filter(id -> other.cue(id).filter(TranslatedCue::isTranslated).isEmpty())
            .collect(Collectors.toSet());
    Translation words = other.orElse(standIn(still));
    return new Edition(other, words.of(source), typesetter, still, findings);
  }

  /** The stand-ins of untranslated cues. */
  private Translation standIn(Set<String> ids) {
    return new Translation(
        language(),
        script.cues().stream()
            .filter(cue -> ids.contains(cue.id()))
            .map(cue -> TranslatedCue.untranslated(cue).saying(cue.text().raw()))
            .toList());
  }

  /** Returns true if a cue has words of this language, or a stand-in. */
  public boolean isSaid(String cueId) {
    return expected.contains(cueId)
        || translation.cue(cueId).filter(TranslatedCue::isTranslated).isPresent();
  }

  /** Its language as a BCP 47 tag. */
  public String language() {
    return script.language();
  }
}
