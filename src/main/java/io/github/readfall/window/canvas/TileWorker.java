package io.github.readfall.window.canvas;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/** Paints tiles on a thread of its own: what was wanted last, and nothing that is not wanted. */
final class TileWorker {

  private static final long IDLE_S = 5;

  /** Room for the largest overview, twice over: the strip may change its height. */
  private static final long OVERVIEW_BYTES = 48L << 20;

  private final TileCache tiles;
  private final TileCache small = new TileCache(OVERVIEW_BYTES);
  private final Consumer<Job> done;
  private final ThreadPoolExecutor thread;
  private final JoinedBands pasteUp = new JoinedBands();
  private final Deque<Job> queue = new ArrayDeque<>();
  private Optional<Job> current = Optional.empty();
  private Optional<ThumbnailPainting> overview = Optional.empty();
  private boolean running;

  /**
   * A tile to be painted.
   *
   * @param painter of its look
   * @param id which
   * @param print tells what it shows
   */
  record Job(TilePainter painter, TileGrid.Id id, long print) {
    boolean isSame(Job other) {
      return print == other.print
          && id.equals(other.id)
          && painter.grid().equals(other.painter.grid());
    }
  }

  /**
   * A worker at rest.
   *
   * @param tiles where painted tiles go
   * @param done is told of each of them, on the worker's thread
   */
  TileWorker(TileCache tiles, Consumer<Job> done) {
    this.tiles = tiles;
    this.done = done;
    this.thread =
        new ThreadPoolExecutor(
            1,
            1,
            IDLE_S,
            TimeUnit.SECONDS,
            new LinkedBlockingQueue<>(),
            task -> {
              Thread made = new Thread(task, "strip tiles");
              made.setDaemon(true);
              return made;
            });
    thread.allowCoreThreadTimeOut(true);
  }

  /** The whole strip at a small scale, as far as it is ready. */
  TileCache overview() {
    return small;
  }

  /**
   * Says what is wanted now; what was wanted before is not any more.
   *
   * @param jobs most urgent first
   * @param whole the strip at a small scale, painted when there is nothing else to do
   * @param nearPx where it is wanted first, in strip pixels from the top
   */
  synchronized void want(List<Job> jobs, Optional<TilePainter> whole, double nearPx) {
    queue.clear();
    jobs.stream().filter(job -> current.filter(job::isSame).isEmpty()).forEach(queue::add);
    overview =
        whole.map(
            painter -> {
              ThumbnailPainting work =
                  overview
                      .filter(known -> known.isOf(painter))
                      .orElseGet(() -> new ThumbnailPainting(painter, small));
              work.startAt(nearPx);
              return work;
            });
    if (!running && !thread.isShutdown()) {
      running = true;
      thread.execute(this::work);
    }
  }

  synchronized boolean isIdle() {
    return !running;
  }

  private void work() {
    try {
      for (Optional<Runnable> task = next(); task.isPresent(); task = next()) {
        task.get().run();
      }
    } catch (RuntimeException e) {
      rest(); // a fault must not leave the strip blank for good
      throw e;
    }
  }

  private synchronized void rest() {
    running = false;
  }

  private synchronized Optional<Runnable> next() {
    current = Optional.ofNullable(queue.poll());
    if (current.isPresent()) {
      Job job = current.get();
      return Optional.of(() -> paint(job));
    }
    Optional<ThumbnailPainting> search = overview;
    if (search.isPresent() && !search.get().isDone()) {
      ThumbnailPainting work = search.get();
      return Optional.of(() -> work.paintNext(pasteUp));
    }
    running = false;
    return Optional.empty();
  }

  private void paint(Job job) {
    tiles.put(
        job.painter().grid().scale(),
        job.id(),
        new TileCache.Tile(job.painter().paint(job.id(), pasteUp), job.print()));
    done.accept(job);
  }

  synchronized void stop() {
    queue.clear();
    overview = Optional.empty();
    small.clear();
    thread.shutdown();
  }
}
