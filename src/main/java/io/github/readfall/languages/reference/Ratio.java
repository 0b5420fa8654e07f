package io.github.readfall.languages.reference;

import io.github.readfall.type.text.Language;
import java.util.ArrayList;
import java.util.List;

/**
 * The length of a language's reference text over another's: a legal text, so only a hint for
 * dialogue.
 *
 * @param codePoints of the whole text over the source's
 * @param graphemes the same by grapheme clusters
 * @param displayCells the same by display cells
 * @param utf8Bytes the same by bytes
 * @param words the same by words between spaces
 * @param articles code points of each article over the source's, from the least to the most
 * @param articleCharacters the median length of an article in the source, in code points
 */
public record Ratio(
    double codePoints,
    double graphemes,
    double displayCells,
    double utf8Bytes,
    double words,
    List<Double> articles,
    int articleCharacters) {

  public Ratio {
    articles = List.copyOf(articles);
  }

  /**
   * The ratio of one language to another.
   *
   * @throws NoReferenceText if either has no reference text
   */
  public static Ratio of(Language source, Language target) throws NoReferenceText {
    return of(ReferenceText.of(source), ReferenceText.of(target));
  }

  private static Ratio of(ReferenceText source, ReferenceText target) {
    List<Double> articles = new ArrayList<>();
    for (int i = 0; i < source.articles().size(); i++) {
      articles.add(characters(target, i) / (double) characters(source, i));
    }
    Measures from = whole(source);
    Measures to = whole(target);
    return new Ratio(
        to.codePoints() / (double) from.codePoints(),
        to.graphemes() / (double) from.graphemes(),
        to.displayCells() / (double) from.displayCells(),
        to.utf8Bytes() / (double) from.utf8Bytes(),
        to.words() / (double) from.words(),
        articles.stream().sorted().toList(),
        medianArticle(source));
  }

  /** All articles, one after the other, nothing between them. */
  static Measures whole(ReferenceText text) {
    return text.articles().stream()
        .map(article -> Measures.of(article.text()))
        .reduce(
            new Measures(0, 0, 0, 0, 0, 0),
            (a, b) ->
                new Measures(
                    a.codePoints() + b.codePoints(),
                    a.graphemes() + b.graphemes(),
                    a.displayCells() + b.displayCells(),
                    a.utf8Bytes() + b.utf8Bytes(),
                    a.words() + b.words(),
                    Math.max(a.longestWord(), b.longestWord())));
  }

  private static int characters(ReferenceText text, int article) {
    String words = text.articles().get(article).text();
    return words.codePointCount(0, words.length());
  }

  private static int medianArticle(ReferenceText text) {
    List<Integer> lengths = new ArrayList<>();
    for (int i = 0; i < text.articles().size(); i++) {
      lengths.add(characters(text, i));
    }
    return lengths.stream().sorted().toList().get(lengths.size() / 2);
  }

  /** The least of any article. */
  public double least() {
    return articles.get(0);
  }

  /** The most of any article. */
  public double most() {
    return articles.get(articles.size() - 1);
  }

  /**
   * A percentile of the articles by nearest rank.
   *
   * @param percent 1 to 100
   */
  public double percentile(int percent) {
    return articles.get(Percentiles.rank(articles.size(), percent));
  }
}
