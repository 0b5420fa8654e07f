package io.github.readfall.lettering.style;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.lettering.toml.StyleFindings;
import io.github.readfall.lettering.toml.TolerantToml;
import io.github.readfall.lettering.toml.TomlChanges;
import io.github.readfall.lettering.toml.TomlEntry;
import io.github.readfall.lettering.toml.TomlMeaning;
import io.github.readfall.lettering.toml.TomlScan;
import io.github.readfall.lettering.toml.TomlValue;
import io.github.readfall.lettering.toml.UnchangeableText;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/**
 * The text of a series.toml, in which one value can be changed and every other character stays as
 * it is: notes, empty lines, order, quotes, line ends, byte order mark. A path is the names of the
 * tables from the outermost to the key, e.g. {@code voices}, {@code ILSE}, {@code size}.
 */
public final class StyleText {

  private final String text;
  private final String fileName;
  private final TomlTable table;
  private final TomlChanges changes;

  private StyleText(String text, String fileName, TomlTable table) {
    this.text = text;
    this.fileName = fileName;
    this.table = table;
    this.changes = new TomlChanges(text, TomlScan.blocks(text));
  }

  /**
   * A text that can be changed.
   *
   * @param fileName as the person named it, for refusals
   * @throws UnchangeableText where it is not TOML throughout
   */
  public static StyleText of(String text, String fileName) throws UnchangeableText {
    StyleFindings complaints = new StyleFindings(fileName);
    TomlTable table = TolerantToml.read(text, complaints);
    Optional<Finding> fault = complaints.inOrder().stream().findFirst();
    if (fault.isPresent()) {
      throw new UnchangeableText(
          "In "
              + fileName
              + " line "
              + fault.get().where().line().orElse(1)
              + " cannot be read, so nothing is changed in the file from here: fix that line by"
              + " hand.");
    }
    return new StyleText(text, fileName, table);
  }

  /** The text itself. */
  public String text() {
    return text;
  }

  /** Returns true if there is a value at a path. */
  public boolean says(List<String> path) {
    return value(path).filter(value -> !(value instanceof TomlTable)).isPresent();
  }

  /** The line of a key or of a table's header, from 1. */
  public Optional<Integer> line(List<String> path) {
    return value(path)
        .flatMap(value -> Optional.ofNullable(table.inputPositionOf(path)))
        .map(TomlPosition::line);
  }

  /** The names of the tables and values in a table, in the order of the file. */
  public List<String> names(String inTable) {
    return value(List.of(inTable))
        .filter(TomlTable.class::isInstance)
        .map(TomlTable.class::cast)
        .map(TomlTable::keySet)
        .map(
            names ->
                names.stream()
                    .sorted(Comparator.comparing(name -> line(List.of(inTable, name)).orElse(0)))
                    .toList())
        .orElse(List.of());
  }

  private Optional<Object> value(List<String> path) {
    return table.contains(path) ? Optional.ofNullable(table.get(path)) : Optional.empty();
  }

  /**
   * The text with a value at a path, in place of the former one. A missing table is added at the
   * end.
   *
   * @throws UnchangeableText if something else would change with it
   */
  public StyleText with(List<String> path, TomlValue value) throws UnchangeableText {
    if (value(path).filter(TomlTable.class::isInstance).isPresent()) {
      throw refusal(path, "has a table in place of one value");
    }
    Optional<TomlEntry> entry = changes.entry(path);
    List<String> ways =
        entry
            .map(there -> List.of(changes.replaced(there, value.toml())))
            .orElseGet(() -> changes.added(path, value.toml()));
    for (String way : ways) {
      Optional<StyleText> changed = changed(way, path, Optional.of(TomlMeaning.of(value)));
      if (changed.isPresent()) {
        return changed.get();
      }
    }
    throw refusal(path, "cannot be changed from here and leave all else as it is");
  }

  /**
   * The text without the value at a path; unchanged if there is none. A comment after the value
   * stays.
   *
   * @throws UnchangeableText if something else would change with it
   */
  public StyleText without(List<String> path) throws UnchangeableText {
    if (!says(path)) {
      return this;
    }
    Optional<StyleText> changed =
        changes
            .entry(path)
            .map(changes::without)
            .flatMap(way -> changed(way, path, Optional.empty()));
    if (changed.isEmpty()) {
      throw refusal(path, "cannot be taken out from here and leave all else as it is");
    }
    return changed.get();
  }

  /** The text after a change, if its meaning is unchanged but for that one value. */
  private Optional<StyleText> changed(String way, List<String> path, Optional<Object> wanted) {
    StyleFindings complaints = new StyleFindings(fileName);
    TomlTable read = TolerantToml.read(way, complaints);
    Map<List<String>, Object> said = TomlMeaning.of(read);
    boolean isRight =
        complaints.inOrder().isEmpty()
            && Optional.ofNullable(said.get(path)).equals(wanted)
            && TomlMeaning.around(said, path)
                .equals(TomlMeaning.around(TomlMeaning.of(table), path));
    return isRight ? Optional.of(new StyleText(way, fileName, read)) : Optional.empty();
  }

  private UnchangeableText refusal(List<String> path, String why) {
    int line = 1;
    for (int size = path.size(); size > 0 && line == 1; size--) {
      line = line(path.subList(0, size)).orElse(1);
    }
    return new UnchangeableText(
        "Line " + line + " of " + fileName + " " + why + ": change it by hand.");
  }
}
