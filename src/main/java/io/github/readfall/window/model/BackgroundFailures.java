package io.github.readfall.window.model;

import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * Hands on faults of our own, so that they are not swallowed by the thread on which they happen.
 *
 * @param events the thread on which they are told
 * @param told hears of each
 */
record BackgroundFailures(Executor events, Consumer<Throwable> told) {

  /** Work whose faults are told. */
  Runnable guarded(Runnable work) {
    return () -> {
      try {
        work.run();
      } catch (RuntimeException | Error fault) {
        events.execute(() -> told.accept(fault));
      }
    };
  }
}
