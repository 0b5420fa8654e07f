package io.github.readfall.export.html;

/**
 * How a page looks.
 *
 * @param css nothing that people wrote, since it cannot be escaped
 */
public record StyleSheet(String css) implements Node {

  public StyleSheet {
    if (css.contains("</")) {
      throw new IllegalArgumentException("a style sheet would end too early");
    }
  }
}
