package io.github.readfall.series.autosave;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * Says when others changed something of the open episode on disk: about a second after, or sooner
 * when asked to look. What is being written is told when it has come to rest, and once.
 */
public final class DiskWatch implements AutoCloseable {

  /** From one look to the next, in ns. House default, no source. */
  static final long EVERY_NANOS = TimeUnit.SECONDS.toNanos(1);

  /** How long something must be at rest before it is told, in ns. House default, no source. */
  static final long REST_NANOS = TimeUnit.MILLISECONDS.toNanos(200);

  private final List<WatchedFile> watched;
  private final Scheduler later;
  private final Consumer<Set<WatchedFile.Kind>> changed;
  private final Map<WatchedFile.Kind, ContentHash> told = new EnumMap<>(WatchedFile.Kind.class);
  private final Map<WatchedFile.Kind, ContentHash> moving = new EnumMap<>(WatchedFile.Kind.class);
  private boolean lookingAgain;
  private boolean ended;

  /** Writes something of ours, which is no change by others. */
  public interface Write<T, X extends Exception> {
    T run() throws X;
  }

  private DiskWatch(
      List<WatchedFile> watched, Scheduler later, Consumer<Set<WatchedFile.Kind>> changed) {
    this.watched = List.copyOf(watched);
    this.later = later;
    this.changed = changed;
  }

  /**
   * Begins to watch. What lies there now is known.
   *
   * @param later when to look; on a thread that may wait for a disk
   * @param changed told on that thread
   */
  public static DiskWatch on(
      List<WatchedFile> watched, Scheduler later, Consumer<Set<WatchedFile.Kind>> changed) {
    DiskWatch watch = new DiskWatch(watched, later, changed);
    watched.forEach(watch::take);
    later.after(EVERY_NANOS, watch::round);
    return watch;
  }

  /** Looks soon, as when the window comes to the front. Any thread. */
  public void lookSoon() {
    later.after(0, this::lookAgain);
  }

  /**
   * Writes one of the watched files without that being told. What others did to it before is.
   *
   * @return what the writing gives
   * @throws X where it fails
   */
  public <T, X extends Exception> T quietly(WatchedFile.Kind kind, Write<T, X> write) throws X {
    synchronized (told) {
      Set<WatchedFile.Kind> before = EnumSet.noneOf(WatchedFile.Kind.class);
      the(kind).filter(this::isNew).ifPresent(w -> before.add(kind));
      try {
        return write.run();
      } finally {
        the(kind).ifPresent(this::take);
        if (!before.isEmpty()) {
          later.after(0, () -> changed.accept(before));
        }
      }
    }
  }

  /** Stops watching. */
  @Override
  public void close() {
    synchronized (told) {
      ended = true;
    }
  }

  private void round() {
    lookAgain();
    synchronized (told) {
      if (ended) {
        return;
      }
    }
    later.after(EVERY_NANOS, this::round);
  }

  /** Looks, unless that is due soon: between two looks at what moves there must be a rest. */
  private void lookAgain() {
    Set<WatchedFile.Kind> atRest = EnumSet.noneOf(WatchedFile.Kind.class);
    synchronized (told) {
      if (ended || lookingAgain) {
        return;
      }
      for (WatchedFile one : watched) {
        Optional<ContentHash> now = one.look();
        if (now.isPresent() && isAtRest(one.kind(), now.get())) {
          atRest.add(one.kind());
        }
      }
      lookingAgain = !moving.isEmpty();
      if (lookingAgain) {
        later.after(REST_NANOS, this::lookForRest);
      }
    }
    if (!atRest.isEmpty()) {
      changed.accept(atRest);
    }
  }

  private void lookForRest() {
    synchronized (told) {
      lookingAgain = false;
    }
    lookAgain();
  }

  /** Whether it has changed, and is as it was at the last look. */
  private boolean isAtRest(WatchedFile.Kind kind, ContentHash now) {
    if (now.equals(told.get(kind))) {
      moving.remove(kind);
      return false;
    }
    if (now.equals(moving.get(kind))) {
      moving.remove(kind);
      told.put(kind, now);
      return true;
    }
    moving.put(kind, now);
    return false;
  }

  private boolean isNew(WatchedFile one) {
    return one.look().filter(now -> !now.equals(told.get(one.kind()))).isPresent();
  }

  private void take(WatchedFile one) {
    one.look()
        .ifPresent(
            now -> {
              told.put(one.kind(), now);
              moving.remove(one.kind());
            });
  }

  private Optional<WatchedFile> the(WatchedFile.Kind kind) {
    return watched.stream().filter(one -> one.kind() == kind).findFirst();
  }
}
