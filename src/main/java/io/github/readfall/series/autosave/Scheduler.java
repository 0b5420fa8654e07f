package io.github.readfall.series.autosave;

/** Runs things after a while, one after the other. */
public interface Scheduler {

  /**
   * Runs something once.
   *
   * @param delayNanos from now on; 0 or more
   */
  void after(long delayNanos, Runnable what);
}
