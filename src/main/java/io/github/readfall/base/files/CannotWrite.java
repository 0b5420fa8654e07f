package io.github.readfall.base.files;

/** Files cannot be written. The message is one plain sentence for people, as reports say it. */
public final class CannotWrite extends Exception {

  private static final long serialVersionUID = 1;

  private final String sentence;
  private final String inWindow;

  public CannotWrite(String sentence) {
    this(sentence, sentence);
  }

  CannotWrite(String sentence, String inWindow) {
    super(sentence);
    this.sentence = sentence;
    this.inWindow = inWindow;
  }

  @Override
  public String getMessage() {
    return sentence;
  }

  /** The message as the window says it. */
  public String inWindow() {
    return inWindow;
  }
}
