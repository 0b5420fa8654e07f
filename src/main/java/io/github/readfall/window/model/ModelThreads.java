package io.github.readfall.window.model;

import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.TimeUnit;

/**
 * The threads that a model uses.
 *
 * @param events the event thread
 * @param quick a thread for results that are needed while the user types
 * @param thorough a thread for everything that may take longer
 * @param later runs a job after a pause, when the user may have stopped typing
 */
public record ModelThreads(Executor events, Executor quick, Executor thorough, Later later) {

  /** A pause that ends typing. House default, no source. */
  static final long PAUSE_MS = 120;

  /** Delays jobs. */
  @FunctionalInterface
  public interface Later {
    /** Runs a job after a pause. */
    void run(Runnable job);
  }

  /** Real threads; daemons, so that they do not keep the program running. */
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

  /** No threads: everything runs at once, on the caller's. */
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
