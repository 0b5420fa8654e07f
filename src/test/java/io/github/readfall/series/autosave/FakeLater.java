package io.github.readfall.series.autosave;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Time that passes when a test says so. */
final class FakeLater implements Scheduler {

  private record Task(long atNanos, long number, Runnable what) {}

  private final List<Task> tasks = new ArrayList<>();
  private long nowNanos;
  private long count;

  @Override
  public synchronized void after(long delayNanos, Runnable what) {
    tasks.add(new Task(nowNanos + delayNanos, count++, what));
  }

  /** Lets time pass, and does on its way what is due. */
  void pass(long millis) {
    long until = nowNanos + TimeUnit.MILLISECONDS.toNanos(millis);
    for (Task next = next(); next.atNanos() <= until; next = next()) {
      tasks.remove(next);
      nowNanos = next.atNanos();
      next.what().run();
    }
    nowNanos = until;
  }

  private synchronized Task next() {
    return tasks.stream()
        .min(Comparator.comparingLong(Task::atNanos).thenComparingLong(Task::number))
        .orElse(new Task(Long.MAX_VALUE, 0, () -> {}));
  }

  int waiting() {
    return tasks.size();
  }
}
