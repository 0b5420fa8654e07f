package io.github.readfall.window.canvas;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/** Paints tiles on a thread of its own: those requested last, and no others. */
final class TileWorker {

  private static final long IDLE_S = 5;

  /** Room for two of the largest thumbnails: the strip may change its height. */
  private static final long THUMBNAIL_BYTES = 48L << 20;

  private final TileCache tiles;
  private final TileCache small = new TileCache(THUMBNAIL_BYTES);
  private final Consumer<Job> done;
  private final ThreadPoolExecutor thread;
  private final JoinedBands bands = new JoinedBands();
  private final Deque<Job> queue = new ArrayDeque<>();
  private Optional<Job> current = Optional.empty();
  private Optional<ThumbnailPainting> thumbnail = Optional.empty();
  private boolean running;

  /**
   * A tile to be painted.
   *
   * @param painter of its scene
   * @param id of the tile
   * @param fingerprint a hash of what it shows
   */
  record Job(TilePainter painter, TileGrid.Id id, long fingerprint) {
    boolean isSame(Job other) {
      return fingerprint == other.fingerprint
          && id.equals(other.id)
          && painter.grid().equals(other.painter.grid());
    }
  }

  /**
   * An idle worker.
   *
   * @param tiles receives painted tiles
   * @param done is called for each of them, on the worker's thread
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

  /** The tiles of the whole strip at a small scale, as far as they are ready. */
  TileCache thumbnail() {
    return small;
  }

  /**
   * Requests tiles; earlier requests are cancelled.
   *
   * @param jobs most urgent first
   * @param whole the strip at a small scale, painted when there is nothing else to do
   * @param nearPx the height at which that begins, in strip pixels from the top
   */
  synchronized void want(List<Job> jobs, Optional<TilePainter> whole, double nearPx) {
    queue.clear();
    jobs.stream().filter(job -> current.filter(job::isSame).isEmpty()).forEach(queue::add);
    thumbnail =
        whole.map(
            painter -> {
              ThumbnailPainting painting =
                  thumbnail
                      .filter(known -> known.isOf(painter))
                      .orElseGet(() -> new ThumbnailPainting(painter, small));
              painting.startAt(nearPx);
              return painting;
            });
    if (!running) {
      running = true;
      thread.execute(this::paintAll);
    }
  }

  synchronized boolean isIdle() {
    return !running;
  }

  private void paintAll() {
    for (Optional<Runnable> task = next(); task.isPresent(); task = next()) {
      run(task.get());
    }
  }

  /** Reports a failure as an uncaught one; the other tiles are painted nevertheless. */
  private static void run(Runnable task) {
    try {
      task.run();
    } catch (RuntimeException | Error failure) {
      Thread thread = Thread.currentThread();
      thread.getUncaughtExceptionHandler().uncaughtException(thread, failure);
    }
  }

  private synchronized Optional<Runnable> next() {
    current = Optional.ofNullable(queue.poll());
    if (current.isPresent()) {
      Job job = current.get();
      return Optional.of(() -> paint(job));
    }
    Optional<ThumbnailPainting> next = thumbnail;
    if (next.isPresent() && !next.get().isDone()) {
      ThumbnailPainting painting = next.get();
      return Optional.of(() -> painting.paintNext(bands));
    }
    running = false;
    return Optional.empty();
  }

  private void paint(Job job) {
    tiles.put(
        job.painter().grid().scale(),
        job.id(),
        new TileCache.Tile(job.painter().paint(job.id(), bands), job.fingerprint()));
    done.accept(job);
  }
}
