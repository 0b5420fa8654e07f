package io.github.readfall.keeping;

/** Runs things after a while, one after the other. */
public interface Later {

  /**
   * Runs something once.
   *
   * @param delayNanos from now on; 0 or more
   */
  void after(long delayNanos, Runnable what);
}
