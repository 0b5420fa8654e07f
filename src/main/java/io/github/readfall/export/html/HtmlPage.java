package io.github.readfall.export.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The head of every page of ours: the page is complete in itself and loads nothing. */
public final class HtmlPage {

  /** Shows only the content of the file (Content Security Policy Level 3, section 6). */
  private static final String POLICY =
      "default-src 'none'; img-src data:; style-src 'unsafe-inline'; base-uri 'none';"
          + " form-action 'none'";

  private HtmlPage() {}

  /** The head of a page. */
  public static Element head(String title, List<StyleSheet> sheets) {
    return Element.of("head")
        .holding(
            Element.of("meta").with("charset", "utf-8"),
            Element.of("meta")
                .with("name", "viewport")
                .with("content", "width=device-width, initial-scale=1"),
            Element.of("meta")
                .with("http-equiv", "Content-Security-Policy")
                .with("content", POLICY),
            Element.of("meta").with("name", "color-scheme").with("content", "light dark"),
            Element.of("link").with("rel", "icon").with("href", "data:,"), // or it is asked for
            Element.of("title", title))
        .holding(sheets);
  }

  /**
   * A style sheet beside a class.
   *
   * @throws IllegalStateException if it is missing
   */
  public static StyleSheet sheet(Class<?> beside, String name) {
    try (InputStream in = beside.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the style sheet " + name + " is missing");
      }
      return new StyleSheet(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
