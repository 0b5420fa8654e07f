package io.github.readfall.languages.translate;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import io.github.readfall.script.Cue;
import io.github.readfall.script.Manner;
import io.github.readfall.script.Panel;
import io.github.readfall.script.Script;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes a translation as comma-separated values: RFC 4180, with a byte order mark. */
public final class TableWriter {

  private final Script script;
  private final Map<String, CueContext> contexts;
  private final Map<String, Map<String, String>> others;

  private TableWriter(
      Script script, Map<String, CueContext> contexts, Map<String, Map<String, String>> others) {
    this.script = script;
    this.contexts = contexts;
    this.others = others;
  }

  /**
   * The text of the file.
   *
   * @param contexts of the cues, by their ids
   * @param others columns of tables that were taken in, for each cue by its id
   */
  public static String write(
      Script script,
      Translation translation,
      Map<String, CueContext> contexts,
      Map<String, Map<String, String>> others) {
    return new TableWriter(script, contexts, others).text(translation);
  }

  private String text(Translation translation) {
    List<String> columns =
        others.values().stream().flatMap(row -> row.keySet().stream()).distinct().sorted().toList();
    StringWriter text = new StringWriter();
    try (CsvWriter writer = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
      text.write('\uFEFF');
      writer.writeRecord(
          Stream.concat(TranslationTable.COLUMNS.stream(), columns.stream()).toList());
      translation.cues().forEach(cue -> writer.writeRecord(row(cue, columns)));
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory cannot fail", e);
    }
    return text.toString();
  }

  private List<String> row(TranslatedCue translated, List<String> columns) {
    Cue cue = translated.cue();
    Optional<Budget> budget = contexts.getOrDefault(cue.id(), CueContext.NONE).budget();
    List<String> row = new ArrayList<>();
    row.add(cue.id());
    row.add(String.valueOf(cue.panel()));
    row.add(cue.names());
    row.add(cue.manners().stream().map(Manner::word).collect(Collectors.joining(", ")));
    row.add(cue.text().raw());
    row.add(translated.target());
    row.add(budget.map(Budget::comfortable).map(String::valueOf).orElse(""));
    row.add(budget.map(Budget::most).map(String::valueOf).orElse(""));
    boolean draft = translated.isStale() || !translated.isTranslated();
    row.add((draft ? State.INITIAL : translated.state()).word());
    row.add(note(translated));
    Map<String, String> own = others.getOrDefault(cue.id(), Map.of());
    columns.forEach(column -> row.add(own.getOrDefault(column, "")));
    return row;
  }

  /** The picture, the neighbours, and the words when it was translated. */
  private String note(TranslatedCue translated) {
    Cue cue = translated.cue();
    Neighbours neighbours = Neighbours.of(cue, script);
    Panel panel = script.panels().get(cue.panel() - 1);
    List<String> parts = new ArrayList<>();
    parts.add(String.join(" ", panel.description()));
    neighbours.before().ifPresent(text -> parts.add("before: " + text));
    neighbours.after().ifPresent(text -> parts.add("after: " + text));
    translated.formerSource().ifPresent(text -> parts.add("translated when it said: " + text));
    return parts.stream().filter(part -> !part.isBlank()).collect(Collectors.joining(" | "));
  }
}
