package io.github.readfall.export.raster;

import io.github.readfall.art.RowSink;
import io.github.readfall.base.OneCall;
import java.io.Closeable;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;

/**
 * Passes rows to a sink that works on a thread of its own, so that rows are made while earlier ones
 * are being compressed. The rows under way take a fixed amount of memory at most.
 */
@OneCall
final class BackgroundSink implements Closeable {

  private static final int MOST_BYTES = 24 << 20;

  private final RowSink to;
  private final int rowBytes;
  private final ExecutorService thread =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread made = new Thread(work, "rows");
            made.setDaemon(true);
            return made;
          });
  private final Deque<Sent> sent = new ArrayDeque<>();
  private int bytes;

  private record Sent(Future<?> done, int bytes) {}

  BackgroundSink(RowSink to, int widthPx) {
    this.to = to;
    this.rowBytes = 3 * widthPx;
  }

  /**
   * Passes rows on; waits if too many are under way.
   *
   * @param rgb one after another; copied
   * @throws IOException if the sink failed at earlier ones
   */
  void rows(byte[] rgb, int rows) throws IOException {
    byte[] own = Arrays.copyOf(rgb, rows * rowBytes);
    while (!sent.isEmpty() && (bytes + own.length > MOST_BYTES || isDone(sent.peekFirst()))) {
      await();
    }
    Future<?> done =
        thread.submit(
            () -> {
              pass(own);
              return own.length;
            });
    sent.addLast(new Sent(done, own.length));
    bytes += own.length;
  }

  private static boolean isDone(Sent first) {
    return first.done().isDone();
  }

  private void pass(byte[] rows) throws IOException {
    byte[] row = new byte[rowBytes];
    for (int at = 0; at < rows.length; at += rowBytes) {
      System.arraycopy(rows, at, row, 0, rowBytes);
      to.row(row);
    }
  }

  /** Waits until the sink has all rows. */
  void end() throws IOException {
    while (!sent.isEmpty()) {
      await();
    }
  }

  private void await() throws IOException {
    Sent first = sent.removeFirst();
    bytes -= first.bytes();
    try {
      first.done().get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("interrupted");
    } catch (ExecutionException e) {
      throw fault(e);
    }
  }

  private static IOException fault(ExecutionException e) {
    Throwable cause = e.getCause();
    if (cause instanceof IOException io) {
      return io;
    }
    if (cause instanceof Error error) {
      throw error;
    }
    throw new IllegalStateException(cause);
  }

  /** Ends the thread; after that the sink is left alone. */
  @Override
  public void close() {
    thread.shutdownNow();
    try {
      boolean ended = false;
      while (!ended) {
        ended = thread.awaitTermination(1, TimeUnit.SECONDS);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
