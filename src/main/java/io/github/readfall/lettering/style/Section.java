package io.github.readfall.lettering.style;

import java.util.List;
import java.util.function.BiFunction;

/**
 * One table of series.toml, or one kind of table of which there may be many.
 *
 * @param name of the table, e.g. {@code strip}; for {@code [phones.NAME]} it is {@code phones}
 * @param many true if a name of the person's own follows
 * @param keys all keys that it may have
 * @param build the value of the table, from its keys and the built-in value
 */
record Section<T>(String name, boolean many, List<Key<?>> keys, BiFunction<Values, T, T> build) {

  Section {
    keys = List.copyOf(keys);
  }

  /** The header as shown to people, e.g. {@code [phones.NAME]}. */
  String header() {
    return many ? "[" + name + ".NAME]" : "[" + name + "]";
  }

  List<String> keyNames() {
    return keys.stream().map(Key::name).toList();
  }
}
