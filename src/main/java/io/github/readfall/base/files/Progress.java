package io.github.readfall.base.files;

/** Receives the progress of long work, and may cancel it. */
@FunctionalInterface
public interface Progress {

  /** Ignores the progress. */
  Progress UNWATCHED = (done, of) -> {};

  /**
   * Reports progress. Called by the working thread, at least a few times a second.
   *
   * @param done units of work that are done
   * @param of units of work in all; positive
   * @throws Cancelled if the work is to end
   */
  void at(long done, long of) throws Cancelled;
}
