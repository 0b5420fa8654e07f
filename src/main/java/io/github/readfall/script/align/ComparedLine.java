package io.github.readfall.script.align;

import io.github.readfall.script.Letters;

/**
 * A line of a script as it is searched for, without regard to case and white space.
 *
 * @param id by which equal ones are distinguished
 * @param panel the present number of its panel; 0 if that is gone
 * @param speaker case folded; empty if it does not count
 * @param text its words, case folded
 */
public record ComparedLine(String id, int panel, String speaker, String text) {

  /** A line as it was written. */
  public static ComparedLine of(String id, int panel, String speaker, String text) {
    return new ComparedLine(id, panel, Letters.fold(speaker), Letters.fold(text));
  }
}
