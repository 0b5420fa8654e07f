package io.github.readfall.base.files;

/** Is told how far long work has come, and may end it. */
@FunctionalInterface
public interface Progress {

  /** Nobody watches. */
  Progress UNWATCHED = (done, of) -> {};

  /**
   * Called now and then by the thread that works, at least a few times a second.
   *
   * @param done how much is done, in whatever the work counts
   * @param of how much there is; positive
   * @throws Cancelled where it is not wanted any more
   */
  void at(long done, long of) throws Cancelled;
}
