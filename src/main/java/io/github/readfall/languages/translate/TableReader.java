package io.github.readfall.languages.translate;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads a table of comma-separated values (RFC 4180). Spreadsheets separate cells by semicolons
 * where the comma is the decimal sign, and by tabs: both are read too, recognised by the line of
 * column names.
 */
public final class TableReader {

  /** House default, no source. */
  private static final int MOST_CHARACTERS = 16 * 1024 * 1024;

  private static final List<Character> SEPARATORS = List.of(',', ';', '\t');
  private static final List<String> NEEDED = List.of("id", "source", "target");

  private final char separator;
  private final List<String> columns;
  private final Set<String> ids = new HashSet<>();

  private TableReader(char separator, List<String> columns) {
    this.separator = separator;
    this.columns = columns;
  }

  /**
   * Reads a table.
   *
   * @param text of the file, with or without a byte order mark
   * @throws TableFault if it cannot be used
   */
  public static TranslationTable read(String text) throws TableFault {
    String whole = text.startsWith("\uFEFF") ? text.substring(1) : text;
    if (whole.length() > MOST_CHARACTERS) {
      throw new TableFault(0, "it is too large for a script: take out what is not needed.");
    }
    for (char separator : SEPARATORS) {
      List<CsvRecord> head = parsed(firstLine(whole), separator);
      if (!head.isEmpty() && names(head.get(0)).containsAll(NEEDED)) {
        return new TableReader(separator, names(head.get(0))).table(parsed(whole, separator));
      }
    }
    throw new TableFault(
        1, "the first line does not name the columns id, source and target: add it.");
  }

  /** A header has no line ends in its cells. */
  private static String firstLine(String text) {
    return text.lines().findFirst().orElse("");
  }

  private static List<String> names(CsvRecord head) {
    return head.getFields().stream().map(name -> name.strip().toLowerCase(Locale.ROOT)).toList();
  }

  private static List<CsvRecord> parsed(String text, char separator) throws TableFault {
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .fieldSeparator(separator)
            .allowExtraFields(true)
            .allowMissingFields(true)
            .allowExtraCharsAfterClosingQuote(false)
            .ofCsvRecord(text)) {
      return reader.stream().toList();
    } catch (CsvParseException e) {
      throw new TableFault(0, "its quotes do not match: write \"\" for a quote in a quoted cell.");
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory cannot fail", e);
    }
  }

  private TranslationTable table(List<CsvRecord> records) throws TableFault {
    Set<String> names = new HashSet<>();
    for (String name : columns) {
      if (!names.add(name)) {
        throw new TableFault(1, "two columns are named \"" + name + "\": rename one.");
      }
    }
    List<TranslationTable.Row> rows = new ArrayList<>();
    for (CsvRecord each : records.subList(1, records.size())) {
      rows.add(row(each));
    }
    return new TranslationTable(separator, rows);
  }

  private TranslationTable.Row row(CsvRecord cells) throws TableFault {
    long line = cells.getStartingLineNumber();
    if (cells.getFieldCount() != columns.size()) {
      throw new TableFault(
          line,
          "the row has "
              + cells.getFieldCount()
              + " cells, and there are "
              + columns.size()
              + " columns: put quotes round a cell that holds the separator.");
    }
    String id = cell(cells, "id").orElse("").strip();
    if (!id.isEmpty() && !ids.add(id)) {
      throw new TableFault(line, "the id \"" + id + "\" is there twice: keep one of the rows.");
    }
    String target = onOneLine(cell(cells, "target").orElse(""));
    return new TranslationTable.Row(
        id,
        cell(cells, "speaker").map(String::strip),
        onOneLine(cell(cells, "source").orElse("")),
        target,
        state(cell(cells, "state").orElse(""), line),
        others(cells));
  }

  private static Optional<State> state(String written, long line) throws TableFault {
    String word = written.strip().toLowerCase(Locale.ROOT);
    Optional<State> state = State.of(word);
    if (!word.isEmpty() && state.isEmpty()) {
      throw new TableFault(
          line, "state is \"" + word + "\": write initial, translated, reviewed or final.");
    }
    return state;
  }

  private Map<String, String> others(CsvRecord cells) {
    Map<String, String> others = new LinkedHashMap<>();
    for (String name : columns) {
      if (!name.isEmpty() && !TranslationTable.COLUMNS.contains(name)) {
        others.put(name, cell(cells, name).orElse(""));
      }
    }
    return others;
  }

  private Optional<String> cell(CsvRecord cells, String column) {
    int at = columns.indexOf(column);
    return at < 0 ? Optional.empty() : Optional.of(cells.getField(at));
  }

  /** A line end in a cell is white space: a forced break is written as in the script. */
  private static String onOneLine(String text) {
    return text.replaceAll("[ \t\r\n]+", " ").strip();
  }
}
