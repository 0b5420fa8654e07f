package io.github.readfall.languages.translate;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A translation as a table: one row for each cue.
 *
 * @param separator what parts its cells
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
   * What a row says about a cue.
   *
   * @param id as the file has it
   * @param speaker who says it; empty where the table has no such column
   * @param source the words that were translated, with the script's markup
   * @param target the translation, with the script's markup; empty for none
   * @param state how far it has come, if the table says so
   * @param others columns that we do not know, by name, in their order
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
