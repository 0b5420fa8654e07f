package io.github.readfall.window.model;

import io.github.readfall.job.polyglot.FittedCue;
import io.github.readfall.job.polyglot.FittedEdition;
import io.github.readfall.languages.translate.TranslatedCue;
import io.github.readfall.languages.translate.Translation;
import io.github.readfall.script.Cue;
import io.github.readfall.script.Script;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The fit of every cue of an episode in every language that it is translated into.
 *
 * @param languages a column each, as BCP 47 tags
 * @param rows one for every cue, in script order
 */
public record LanguageMatrix(List<String> languages, List<Row> rows) {

  /** No translations. */
  public static final LanguageMatrix EMPTY = new LanguageMatrix(List.of(), List.of());

  public LanguageMatrix {
    languages = List.copyOf(languages);
    rows = List.copyOf(rows);
  }

  /**
   * A cue in every language.
   *
   * @param cue the original
   * @param cells one for every language
   */
  public record Row(Cue cue, List<Cell> cells) {
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /**
   * A cue in one language.
   *
   * @param translated the cue's translation
   * @param isKnown whether the fit of the language is known
   * @param fitted the fit of the cue; also empty if it has no outline to fit into
   */
  public record Cell(TranslatedCue translated, boolean isKnown, Optional<FittedCue> fitted) {

    /**
     * A cell.
     *
     * @param edition the fit of the language; empty until it is known
     */
    public static Cell of(TranslatedCue translated, Optional<FittedEdition> edition) {
      return new Cell(
          translated,
          edition.isPresent(),
          edition.flatMap(fitted -> fitted.cue(translated.cue().id())));
    }
  }

  /**
   * The matrix of a script.
   *
   * @param translations of the script
   * @param fits the fit of the episode in a language; empty until it is known
   */
  public static LanguageMatrix of(
      Script script,
      List<Translation> translations,
      Function<String, Optional<FittedEdition>> fits) {
    List<Row> rows =
        script.cues().stream().map(cue -> new Row(cue, cells(cue, translations, fits))).toList();
    return new LanguageMatrix(translations.stream().map(Translation::language).toList(), rows);
  }

  private static List<Cell> cells(
      Cue cue, List<Translation> translations, Function<String, Optional<FittedEdition>> fits) {
    return translations.stream()
        .map(
            translation -> {
              TranslatedCue translated =
                  translation.cue(cue.id()).orElseGet(() -> TranslatedCue.untranslated(cue));
              return Cell.of(translated, fits.apply(translation.language()));
            })
        .toList();
  }
}
