package io.github.readfall.export.raster;

import io.github.readfall.base.files.Cancelled;
import io.github.readfall.base.files.CannotWrite;
import java.io.IOException;

/** Wraps a checked exception so that it can leave a row sink; unwrapped by the caller. */
final class TunnelledException extends IOException {

  private static final long serialVersionUID = 1;

  private TunnelledException(Exception what) {
    super(what.getMessage(), what);
  }

  static TunnelledException of(CannotWrite unwritten) {
    return new TunnelledException(unwritten);
  }

  static TunnelledException of(Cancelled halted) {
    return new TunnelledException(halted);
  }

  /** Throws the wrapped exception. */
  IOException unpacked() throws CannotWrite, Cancelled {
    if (getCause() instanceof CannotWrite unwritten) {
      throw unwritten;
    }
    if (getCause() instanceof Cancelled halted) {
      throw halted;
    }
    return this;
  }
}
