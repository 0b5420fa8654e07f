package io.github.readfall.outbox;

/** Work was ended by whoever asked for it. */
public final class Halted extends Exception {

  private static final long serialVersionUID = 1;

  public Halted() {
    super("Stopped: nothing was written.");
  }
}
