package io.github.readfall.window.model;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Runs the newest of the jobs it is given; one that has not begun when the next comes is dropped.
 */
final class LatestJob {

  private final Executor thread;
  private final AtomicReference<Optional<Runnable>> waiting =
      new AtomicReference<>(Optional.empty());

  /** Runs on one thread, so that jobs end in the order in which they began. */
  LatestJob(Executor thread) {
    this.thread = thread;
  }

  /** Runs a job as soon as the one before it has ended, unless another comes in the meantime. */
  void offer(Runnable job) {
    if (waiting.getAndSet(Optional.of(job)).isEmpty()) {
      thread.execute(() -> waiting.getAndSet(Optional.empty()).ifPresent(Runnable::run));
    }
  }
}
