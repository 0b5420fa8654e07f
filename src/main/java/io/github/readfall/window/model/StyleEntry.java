package io.github.readfall.window.model;

import io.github.readfall.lettering.style.LookKey;
import io.github.readfall.lettering.style.StyleText;
import io.github.readfall.script.Keywords;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One value of a house style.
 *
 * @param subject what it is said of
 * @param key which of its values; empty where it has but one, as the limit of a rule
 */
public record StyleEntry(StyleSubject subject, Optional<LookKey> key) {

  /**
   * Where it stands in the text, or would stand. A name can be written in several ways and more
   * than once: the last that says the value counts, as it does for the reader.
   */
  List<String> path(StyleText text, Keywords keywords) {
    List<String> written =
        text.names(subject.table()).stream()
            .filter(name -> subject.isNamed(name, keywords))
            .toList();
    List<List<String>> paths =
        Stream.concat(Stream.of(subject.name()), written.stream()).map(this::under).toList();
    return paths.stream()
        .filter(text::says)
        .reduce((first, later) -> later)
        .orElse(paths.get(paths.size() - 1));
  }

  private List<String> under(String name) {
    return key.map(k -> List.of(subject.table(), name, k.word()))
        .orElse(List.of(subject.table(), name));
  }
}
