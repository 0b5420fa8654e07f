package io.github.readfall.lettering.toml;

/** A value that cannot be changed in a series.toml and leave all else as it is. */
public final class UnchangeableText extends Exception {

  private static final long serialVersionUID = 1;

  /**
   * A refusal.
   *
   * @param message a sentence that says what to change by hand, and on which line
   */
  public UnchangeableText(String message) {
    super(message);
  }
}
