package io.github.readfall.window.model;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Runs the latest of the jobs that it is given; one that has not begun when the next arrives is
 * discarded.
 */
final class LatestJob {

  private final Executor thread;
  private final AtomicReference<Optional<Runnable>> waiting =
      new AtomicReference<>(Optional.empty());

  /** Runs jobs on one thread, so that they end in the order in which they began. */
  LatestJob(Executor thread) {
    this.thread = thread;
  }

  /** Runs a job as soon as the present one has ended, unless another arrives in the meantime. */
  void offer(Runnable job) {
    if (waiting.getAndSet(Optional.of(job)).isEmpty()) {
      thread.execute(() -> waiting.getAndSet(Optional.empty()).ifPresent(Runnable::run));
    }
  }
}
