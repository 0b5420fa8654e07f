package io.github.readfall.window.model;

import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * Reports internal errors of background jobs, so that they are not lost on their threads.
 *
 * @param events the thread on which they are reported
 * @param listener is given each of them
 */
record BackgroundFailures(Executor events, Consumer<Throwable> listener) {

  /** Wraps a job so that its internal errors are reported. */
  Runnable guarded(Runnable work) {
    return () -> {
      try {
        work.run();
      } catch (RuntimeException | Error failure) {
        events.execute(() -> listener.accept(failure));
      }
    };
  }
}
