package io.github.readfall.raster;

import io.github.readfall.outbox.Halted;
import io.github.readfall.outbox.Unwritten;
import java.io.IOException;

/** Carries out of a sink of rows what is no fault of a stream. */
final class Carried extends IOException {

  private static final long serialVersionUID = 1;

  private Carried(Exception what) {
    super(what.getMessage(), what);
  }

  static Carried of(Unwritten unwritten) {
    return new Carried(unwritten);
  }

  static Carried of(Halted halted) {
    return new Carried(halted);
  }

  /** Throws what it carries. */
  IOException unpacked() throws Unwritten, Halted {
    if (getCause() instanceof Unwritten unwritten) {
      throw unwritten;
    }
    if (getCause() instanceof Halted halted) {
      throw halted;
    }
    return this;
  }
}
