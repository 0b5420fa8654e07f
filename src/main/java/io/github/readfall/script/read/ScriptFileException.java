package io.github.readfall.script.read;

/** A script's file cannot be read; the message is a sentence for people. */
public final class ScriptFileException extends Exception {

  public ScriptFileException(String message) {
    super(message);
  }

  public ScriptFileException(String message, Throwable cause) {
    super(message, cause);
  }
}
