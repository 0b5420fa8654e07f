package io.github.readfall.languages.reference;

import io.github.readfall.script.Emphasis;
import io.github.readfall.script.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Chooses the words of a stand-in that are emphasised: those at the places of emphasised words in
 * the source, and for each emphasised stretch of the source at least one.
 */
final class Emphasised {

  private Emphasised() {}

  /**
   * The emphasis of each word.
   *
   * @param words of the stand-in's sentence
   * @param sentence of the source
   * @param spans of the source
   */
  static List<Optional<Emphasis>> of(List<String> words, Sentence sentence, List<Span> spans) {
    List<Optional<Emphasis>> found = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      double place = middle(words, i, sentence);
      found.add(
          spans.stream()
              .filter(span -> span.start() <= place && place < span.end())
              .map(Span::emphasis)
              .findFirst());
    }
    spans.stream()
        .filter(span -> isIn(span, sentence))
        .forEach(span -> addNearest(words, sentence, span, found));
    return found;
  }

  private static boolean isIn(Span span, Sentence sentence) {
    return span.start() < sentence.start() + sentence.words().length()
        && span.end() > sentence.start();
  }

  private static void addNearest(
      List<String> words, Sentence sentence, Span span, List<Optional<Emphasis>> found) {
    int nearest = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < words.size(); i++) {
      double place = middle(words, i, sentence);
      double away = Math.abs(place - (span.start() + span.end()) / 2.0);
      boolean own = found.get(i).isPresent() && span.start() <= place && place < span.end();
      if (own) {
        return;
      }
      if (found.get(i).isEmpty() && away < least) {
        least = away;
        nearest = i;
      }
    }
    if (nearest >= 0) {
      found.set(nearest, Optional.of(span.emphasis()));
    }
  }

  /** The place in the source of the middle of a word. */
  private static double middle(List<String> words, int word, Sentence sentence) {
    int all = words.stream().mapToInt(String::length).sum();
    int before = words.stream().limit(word).mapToInt(String::length).sum();
    double share = (before + words.get(word).length() / 2.0) / all;
    return sentence.start() + share * sentence.words().length();
  }
}
