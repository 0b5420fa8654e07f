package io.github.readfall.lettering.style;

import java.util.stream.Collectors;

/** Every key of series.toml, as a page for people: written from what the reader obeys. */
final class StyleKeys {

  private StyleKeys() {}

  /** A Markdown table of all keys with what they may be, an example and what they mean. */
  static String markdown() {
    return Sections.ALL.stream()
        .flatMap(section -> section.keys().stream().map(key -> row(section, key)))
        .collect(
            Collectors.joining(
                "\n",
                "| table | key | value | example | meaning |\n|---|---|---|---|---|\n",
                "\n"));
  }

  private static String row(Section<?> section, Key<?> key) {
    return "| `"
        + section.header()
        + "` | `"
        + key.name()
        + "` | "
        + key.kind().expected()
        + " | `"
        + key.example()
        + "` | "
        + key.meaning()
        + " |";
  }
}
