package io.github.readfall.base.files;

/** Work was ended by whoever asked for it. */
public final class Cancelled extends Exception {

  private static final long serialVersionUID = 1;

  public Cancelled() {
    super("Stopped: nothing was written.");
  }
}
