package io.github.readfall.lettering.style;

import io.github.readfall.lettering.toml.StyleFindings;
import io.github.readfall.lettering.toml.TolerantToml;

/**
 * Reads series.toml. Whatever is wrong with it is a finding with line and column, and the built-in
 * value takes its place; nothing makes it throw.
 *
 * <p>Findings, all warnings: {@code style/syntax} if a line is not TOML, {@code style/unknown-key},
 * {@code style/wrong-type}, {@code style/impossible}.
 */
public final class StyleReader {

  /**
   * The house style that a series.toml describes.
   *
   * @param toml the text of the file
   * @param fileName as the person named it, for the findings
   */
  public ReadStyle read(String toml, String fileName) {
    StyleFindings complaints = new StyleFindings(fileName);
    TableValues root = TableValues.root(TolerantToml.read(toml, complaints), complaints);
    HouseStyle style = new StyleTables(root).style();
    return new ReadStyle(style, complaints.inOrder());
  }
}
