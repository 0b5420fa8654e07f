package io.github.readfall.languages.reference;

import io.github.readfall.type.text.Language;
import java.util.Set;

/** Tells which languages are written with spaces: between words, and between sentences. */
final class Spaces {

  private static final Set<String> NOT_BETWEEN_WORDS = Set.of("Jpan", "Hans", "Hant", "Thai");

  private Spaces() {}

  /** Returns true if words are separated by spaces. */
  static boolean areWritten(Language language) {
    return !NOT_BETWEEN_WORDS.contains(language.script());
  }

  /** The gap between two sentences: in Thai, a space, though none between words. */
  static String betweenSentences(Language language) {
    return areWritten(language) || language.script().equals("Thai") ? " " : "";
  }
}
