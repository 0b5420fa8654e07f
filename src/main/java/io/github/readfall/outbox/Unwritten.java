package io.github.readfall.outbox;

/** Files cannot be written. The message is one plain sentence for people. */
public final class Unwritten extends Exception {

  private static final long serialVersionUID = 1;

  private final String sentence;

  public Unwritten(String sentence) {
    super(sentence);
    this.sentence = sentence;
  }

  @Override
  public String getMessage() {
    return sentence;
  }
}
