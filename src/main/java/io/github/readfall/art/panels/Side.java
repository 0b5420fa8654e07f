package io.github.readfall.art.panels;

/** A side of a panel. */
enum Side {
  TOP(1),
  BOTTOM(-1),
  LEFT(1),
  RIGHT(-1);

  private final int inward;

  Side(int inward) {
    this.inward = inward;
  }

  /** The direction into the panel: 1 if coordinates grow, else -1. */
  int inward() {
    return inward;
  }

  /** Returns true if its edge runs along the rows of the strip. */
  boolean isLevel() {
    return this == TOP || this == BOTTOM;
  }
}
