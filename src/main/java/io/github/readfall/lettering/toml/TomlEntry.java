package io.github.readfall.lettering.toml;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A key and its value, with their places in a text.
 *
 * @param path from the root of the file
 * @param start of the key, in the text
 * @param valueStart of the value
 * @param valueEnd after the value
 * @param inline true if the value is a table in braces
 * @param inner entries in those braces, in their order
 */
public record TomlEntry(
    List<String> path,
    int start,
    int valueStart,
    int valueEnd,
    boolean inline,
    List<TomlEntry> inner) {

  public TomlEntry {
    path = List.copyOf(path);
    inner = List.copyOf(inner);
  }

  /** This entry and all in its braces, the outer before the inner. */
  Stream<TomlEntry> all() {
    return Stream.concat(Stream.of(this), inner.stream().flatMap(TomlEntry::all));
  }

  /** Returns true if it is somewhere below a path. */
  boolean isBelow(List<String> table) {
    return startsWith(path, table) && path.size() > table.size();
  }

  /** Returns true if one path begins with another. */
  static boolean startsWith(List<String> path, List<String> with) {
    return path.size() >= with.size() && path.subList(0, with.size()).equals(with);
  }

  /** A path and its continuation. */
  static List<String> joined(List<String> path, List<String> more) {
    List<String> all = new ArrayList<>(path);
    all.addAll(more);
    return all;
  }
}
