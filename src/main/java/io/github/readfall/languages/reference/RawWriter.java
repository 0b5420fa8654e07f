package io.github.readfall.languages.reference;

import io.github.readfall.script.Emphasis;
import java.util.List;
import java.util.Optional;

/** Writes words with the script's markup. For one text; dropped after it. */
final class RawWriter {

  private final StringBuilder raw = new StringBuilder();

  /** Adds a sentence, with markup round emphasised words. */
  void add(
      String opening,
      List<String> words,
      List<Optional<Emphasis>> emphases,
      String gap,
      String ending) {
    raw.append(opening);
    Optional<Emphasis> now = Optional.empty();
    for (int i = 0; i < words.size(); i++) {
      Optional<Emphasis> next = emphases.get(i);
      boolean changes = !next.equals(now);
      if (changes) {
        now.ifPresent(emphasis -> raw.append(closing(emphasis)));
      }
      raw.append(i == 0 ? "" : gap);
      if (changes) {
        next.ifPresent(emphasis -> raw.append(opening(emphasis)));
      }
      raw.append(words.get(i));
      now = next;
    }
    now.ifPresent(emphasis -> raw.append(closing(emphasis)));
    raw.append(ending);
  }

  /** Adds the gap between two sentences. */
  void addGap(String gap) {
    raw.append(gap);
  }

  private static String opening(Emphasis emphasis) {
    return switch (emphasis) {
      case STRONG -> "*";
      case SLANTED -> "_";
      case STRONG_SLANTED -> "*_";
    };
  }

  private static String closing(Emphasis emphasis) {
    return emphasis == Emphasis.STRONG_SLANTED ? "_*" : opening(emphasis);
  }

  @Override
  public String toString() {
    return raw.toString();
  }
}
