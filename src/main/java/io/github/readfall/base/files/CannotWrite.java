package io.github.readfall.base.files;

/** Files cannot be written. The message is one plain sentence for people. */
public final class CannotWrite extends Exception {

  private static final long serialVersionUID = 1;

  private final String sentence;

  public CannotWrite(String sentence) {
    super(sentence);
    this.sentence = sentence;
  }

  @Override
  public String getMessage() {
    return sentence;
  }
}
