package io.github.readfall.export.raster;

import io.github.readfall.art.RowSink;
import java.io.IOException;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;

/** Gathers rows into slices. */
final class SliceRows implements RowSink {

  private final int rowBytes;
  private final List<Integer> ends;
  private final Sink to;
  private final AtomicInteger row = new AtomicInteger();
  private final AtomicInteger slice = new AtomicInteger();
  private final AtomicReference<byte[]> held = new AtomicReference<>(new byte[0]);

  /** Takes slices from the top. */
  interface Sink {

    /**
     * Takes a slice, which is its own from now on.
     *
     * @param rgb its rows one after another
     * @param top its first row's place
     */
    void slice(byte[] rgb, int top) throws IOException;
  }

  SliceRows(int widthPx, List<Integer> ends, Sink to) {
    this.rowBytes = 3 * widthPx;
    this.ends = List.copyOf(ends);
    this.to = to;
  }

  @Override
  public void row(byte[] rgb) throws IOException {
    int top = slice.get() == 0 ? 0 : ends.get(slice.get() - 1);
    int end = ends.get(slice.get());
    int at = row.getAndIncrement();
    if (at == top) {
      held.set(new byte[rowBytes * (end - top)]);
    }
    System.arraycopy(rgb, 0, held.get(), (at - top) * rowBytes, rowBytes);
    if (at + 1 == end) {
      slice.incrementAndGet();
      to.slice(held.getAndSet(new byte[0]), top);
    }
  }
}
