package io.github.readfall.font;

/** A font file that cannot be used. The message is one plain sentence for people. */
public final class FaceException extends Exception {

  private static final long serialVersionUID = 1;

  public FaceException(String message) {
    super(message);
  }
}
