package io.github.readfall.lettering.toml;

import java.util.List;

/**
 * A header and the lines below it, up to the next header; the first of a file has none.
 *
 * @param path of the table; empty above the first header
 * @param isList true if it is one of a list, as in {@code [[table]]}
 * @param bodyStart where the line below the header begins
 * @param bodyEnd where the next header begins, or the text ends
 * @param entries in their order
 */
record TomlBlock(
    List<String> path, boolean isList, int bodyStart, int bodyEnd, List<TomlEntry> entries) {

  TomlBlock {
    path = List.copyOf(path);
    entries = List.copyOf(entries);
  }
}
