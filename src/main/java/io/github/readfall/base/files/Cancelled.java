package io.github.readfall.base.files;

/** Thrown when work is cancelled by the person who started it. */
public final class Cancelled extends Exception {

  private static final long serialVersionUID = 1;

  public Cancelled() {
    super("Stopped: nothing was written.");
  }
}
