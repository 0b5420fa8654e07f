package io.github.readfall.art;

/** A picture that cannot be read. The message is one plain sentence for people. */
public final class UnreadableArt extends Exception {

  private static final long serialVersionUID = 1;

  private final String sentence;

  public UnreadableArt(String sentence) {
    super(sentence);
    this.sentence = sentence;
  }

  @Override
  public String getMessage() {
    return sentence;
  }
}
