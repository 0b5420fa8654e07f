package io.github.readfall.type.font;

/** A font file that cannot be used. The message is one plain sentence for people. */
public final class FaceException extends Exception {

  private static final long serialVersionUID = 1;

  private final String sentence;

  public FaceException(String sentence) {
    super(sentence);
    this.sentence = sentence;
  }

  @Override
  public String getMessage() {
    return sentence;
  }
}
