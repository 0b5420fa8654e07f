package io.github.readfall.export.html;

/**
 * The style sheet of a page.
 *
 * @param css without text that people wrote, since it cannot be escaped
 */
public record StyleSheet(String css) implements Node {

  public StyleSheet {
    if (css.contains("</")) {
      throw new IllegalArgumentException("a style sheet would end too early");
    }
  }
}
