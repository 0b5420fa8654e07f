package io.github.readfall.series.autosave;

/** Runs tasks after a delay, one after the other. */
public interface Scheduler {

  /**
   * Runs something once.
   *
   * @param delayNanos from now on; 0 or more
   */
  void after(long delayNanos, Runnable what);
}
