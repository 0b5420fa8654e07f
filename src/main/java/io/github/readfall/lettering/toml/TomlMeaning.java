package io.github.readfall.lettering.toml;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/** All that a TOML text says, to be compared: every value by its path, and every empty table. */
public final class TomlMeaning {

  private static final Object EMPTY = List.of("an empty table");

  private TomlMeaning() {}

  public static Map<List<String>, Object> of(TomlTable table) {
    Map<List<String>, Object> said = new HashMap<>();
    collect(table, List.of(), said);
    return said;
  }

  /** The meaning of a written value. */
  public static Object of(TomlValue value) {
    return plain(Objects.requireNonNull(Toml.parse("v = " + value.toml()).get("v")));
  }

  /**
   * The meaning of a text with another value at a path, or none; the tables round it may come and
   * go.
   */
  public static Map<List<String>, Object> around(
      Map<List<String>, Object> said, List<String> path) {
    Map<List<String>, Object> others = new HashMap<>(said);
    others.keySet().removeIf(other -> TomlEntry.startsWith(path, other));
    return others;
  }

  private static void collect(TomlTable table, List<String> path, Map<List<String>, Object> said) {
    if (table.isEmpty()) {
      said.put(path, EMPTY);
    }
    for (String key : table.keySet()) {
      List<String> inner = TomlEntry.joined(path, List.of(key));
      Object value = Objects.requireNonNull(table.get(List.of(key)));
      if (value instanceof TomlTable further) {
        collect(further, inner, said);
      } else {
        said.put(inner, plain(value));
      }
    }
  }

  /** Lists and tables have no equality of their own. */
  private static Object plain(Object value) {
    if (value instanceof TomlTable table) {
      return of(table);
    }
    return value instanceof TomlArray list
        ? list.toList().stream().map(TomlMeaning::plain).toList()
        : value;
  }
}
