package io.github.readfall.style;

/** A value that cannot be changed in a series.toml and leave all else as it is. */
public final class UnchangeableText extends Exception {

  private static final long serialVersionUID = 1;

  /**
   * A refusal.
   *
   * @param message a sentence that says what to do by hand, and on which line
   */
  UnchangeableText(String message) {
    super(message);
  }
}
