package io.github.readfall.series.autosave;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * Reports that others changed a file of the open episode: about a second after the change, or
 * sooner when asked to check. A file that is being written is reported once, when it is complete.
 */
public final class DiskWatch implements AutoCloseable {

  /** Time from one check to the next, in ns. House default, no source. */
  static final long EVERY_NANOS = TimeUnit.SECONDS.toNanos(1);

  /** How long a file must be unchanged before it is reported, in ns. House default, no source. */
  static final long REST_NANOS = TimeUnit.MILLISECONDS.toNanos(200);

  private final List<WatchedFile> watched;
  private final Scheduler scheduler;
  private final Consumer<Set<WatchedFile.Kind>> listener;
  private final Map<WatchedFile, ContentHash> known = new HashMap<>();
  private final Map<WatchedFile, ContentHash> changing = new HashMap<>();
  private boolean checkScheduled;
  private boolean ended;

  private DiskWatch(
      List<WatchedFile> watched, Scheduler scheduler, Consumer<Set<WatchedFile.Kind>> listener) {
    this.watched = List.copyOf(watched);
    this.scheduler = scheduler;
    this.listener = listener;
  }

  /**
   * Begins to watch. The present contents count as known.
   *
   * @param scheduler runs the checks, on a thread that may wait for a disk
   * @param listener gets what changed, on that thread
   */
  public static DiskWatch on(
      List<WatchedFile> watched, Scheduler scheduler, Consumer<Set<WatchedFile.Kind>> listener) {
    DiskWatch watch = new DiskWatch(watched, scheduler, listener);
    watched.forEach(file -> file.look().ifPresent(now -> watch.known.put(file, now)));
    scheduler.after(EVERY_NANOS, watch::checkAndRepeat);
    return watch;
  }

  /** Checks soon, as when the window comes to the front. Any thread. */
  public void checkSoon() {
    scheduler.after(0, this::check);
  }

  /** Stops watching. */
  @Override
  public void close() {
    synchronized (known) {
      ended = true;
    }
  }

  private void checkAndRepeat() {
    check();
    synchronized (known) {
      if (ended) {
        return;
      }
    }
    scheduler.after(EVERY_NANOS, this::checkAndRepeat);
  }

  /** Checks now, unless a check of a changing file is due soon: it must rest between two checks. */
  private void check() {
    Set<WatchedFile.Kind> changed = EnumSet.noneOf(WatchedFile.Kind.class);
    synchronized (known) {
      if (ended || checkScheduled) {
        return;
      }
      for (WatchedFile file : watched) {
        Optional<ContentHash> now = file.look();
        if (now.isPresent() && isChangedAndAtRest(file, now.get())) {
          changed.add(file.kind());
        }
      }
      checkScheduled = !changing.isEmpty();
      if (checkScheduled) {
        scheduler.after(REST_NANOS, this::checkForRest);
      }
    }
    if (!changed.isEmpty()) {
      listener.accept(changed);
    }
  }

  private void checkForRest() {
    synchronized (known) {
      checkScheduled = false;
    }
    check();
  }

  private boolean isChangedAndAtRest(WatchedFile file, ContentHash now) {
    if (now.equals(known.get(file))) {
      changing.remove(file);
      return false;
    }
    if (now.equals(changing.get(file))) {
      changing.remove(file);
      known.put(file, now);
      return true;
    }
    changing.put(file, now);
    return false;
  }
}
