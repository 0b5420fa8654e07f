package io.github.readfall.script.align;

import io.github.readfall.script.Letters;

/**
 * A line of a script as it is looked for: case and white space do not count.
 *
 * @param id by which equals are told apart
 * @param panel the number that its panel has in the script as it is now; 0 where that is gone
 * @param speaker who says it, folded; empty where that does not count
 * @param text its words, folded
 */
public record ComparedLine(String id, int panel, String speaker, String text) {

  /** A line as it was written. */
  public static ComparedLine of(String id, int panel, String speaker, String text) {
    return new ComparedLine(id, panel, Letters.fold(speaker), Letters.fold(text));
  }
}
