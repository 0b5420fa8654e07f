package io.github.readfall.series.autosave;

import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/** One thread that waits and works, and does not keep the program from ending. */
public final class BackgroundThread implements Scheduler, AutoCloseable {

  private final ScheduledThreadPoolExecutor executor;

  /**
   * Starts it.
   *
   * @param name that a list of threads shows
   */
  public BackgroundThread(String name) {
    executor = new ScheduledThreadPoolExecutor(1, work -> daemon(work, name));
    executor.setExecuteExistingDelayedTasksAfterShutdownPolicy(false);
  }

  private static Thread daemon(Runnable work, String name) {
    Thread thread = new Thread(work, name);
    thread.setDaemon(true);
    return thread;
  }

  @Override
  public void after(long delayNanos, Runnable what) {
    if (!executor.isShutdown()) {
      var unused = executor.schedule(() -> run(what), delayNanos, TimeUnit.NANOSECONDS);
    }
  }

  /**
   * Runs a task so that its failure is reported as on any thread; the executor alone would hide it.
   */
  private static void run(Runnable what) {
    try {
      what.run();
    } catch (RuntimeException | Error fault) {
      Thread thread = Thread.currentThread();
      thread.getUncaughtExceptionHandler().uncaughtException(thread, fault);
    }
  }

  /** Discards pending tasks. */
  @Override
  public void close() {
    executor.shutdown();
  }
}
