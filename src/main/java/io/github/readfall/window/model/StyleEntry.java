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
 * @param subject that the value belongs to
 * @param key of the value; empty if the subject has only one, such as the limit of a rule
 */
public record StyleEntry(StyleSubject subject, Optional<LookKey> key) {

  /**
   * The path of the value in the text, whether it is there or not. A name can be written in several
   * forms and more than once: the last that has the value counts, as it does for the reader.
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
