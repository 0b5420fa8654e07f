package io.github.readfall.window.model;

import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.TimeUnit;

/**
 * The threads that a desk works on.
 *
 * @param events the window's own
 * @param quick a thread for what somebody who types waits for
 * @param thorough a thread for all that may take longer
 * @param later runs a job a moment later, when the fingers may have come to rest
 */
public record ModelThreads(Executor events, Executor quick, Executor thorough, Later later) {

  /** Fingers that rest this long have stopped typing. House default, no source. */
  static final long PAUSE_MS = 120;

  /** Runs a job later. */
  @FunctionalInterface
  public interface Later {
    /** Runs a job when a pause has gone by. */
    void run(Runnable job);
  }

  /** Real threads, which do not keep the program from ending. */
  public static ModelThreads real(Executor events) {
    ScheduledExecutorService quick = Executors.newSingleThreadScheduledExecutor(named("quick"));
    Executor thorough = Executors.newSingleThreadExecutor(named("thorough"));
    return new ModelThreads(
        events,
        quick,
        thorough,
        job -> {
          var unused = quick.schedule(job, PAUSE_MS, TimeUnit.MILLISECONDS);
        });
  }

  /** Everything at once, on the thread of the caller. */
  public static ModelThreads none() {
    return new ModelThreads(Runnable::run, Runnable::run, Runnable::run, Runnable::run);
  }

  private static ThreadFactory named(String name) {
    return work -> {
      Thread thread = new Thread(work, "readfall-" + name);
      thread.setDaemon(true);
      return thread;
    };
  }
}
