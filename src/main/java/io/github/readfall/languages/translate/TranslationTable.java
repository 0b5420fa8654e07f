package io.github.readfall.languages.translate;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A translation as a table: one row for each cue.
 *
 * @param separator of its cells
 * @param rows in the order of the file
 */
public record TranslationTable(char separator, List<Row> rows) {

  /** The columns that we write, in their order. */
  static final List<String> COLUMNS =
      List.of(
          "id",
          "panel",
          "speaker",
          "manner",
          "source",
          "target",
          "comfortable",
          "most",
          "state",
          "note");

  public TranslationTable {
    rows = List.copyOf(rows);
  }

  /**
   * A row about a cue.
   *
   * @param id as in the file
   * @param speaker empty if the table has no such column
   * @param source the words that were translated, with the script's markup
   * @param target the translation, with the script's markup; empty for none
   * @param state of the translation, if the table has one
   * @param others unknown columns, by name, in their order
   */
  public record Row(
      String id,
      Optional<String> speaker,
      String source,
      String target,
      Optional<State> state,
      Map<String, String> others) {

    public Row {
      others = Collections.unmodifiableMap(new LinkedHashMap<>(others));
    }
  }
}
