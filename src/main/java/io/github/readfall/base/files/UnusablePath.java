package io.github.readfall.base.files;

/** A file or folder that cannot be used. The message is one plain sentence for people. */
public final class UnusablePath extends Exception {

  private static final long serialVersionUID = 1;

  private final String sentence;

  public UnusablePath(String sentence) {
    super(sentence);
    this.sentence = sentence;
  }

  @Override
  public String getMessage() {
    return sentence;
  }
}
