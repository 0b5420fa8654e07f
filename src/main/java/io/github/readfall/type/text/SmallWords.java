package io.github.readfall.type.text;

import java.util.Set;

/**
 * The small words of a language that a line break should not leave alone, in lower case.
 *
 * @param articles belong to the word after them
 * @param particles belong to the word before them
 */
public record SmallWords(Set<String> articles, Set<String> particles) {

  static final SmallWords NONE = new SmallWords(Set.of(), Set.of());

  public SmallWords {
    articles = Set.copyOf(articles);
    particles = Set.copyOf(particles);
  }
}
