package io.github.readfall.export.raster;

import io.github.readfall.art.RowSink;
import io.github.readfall.base.OneCall;
import java.io.IOException;
import java.util.List;

/** Gathers rows into slices. */
@OneCall
final class SliceRows implements RowSink {

  private final int rowBytes;
  private final List<Integer> ends;
  private final Sink to;
  private int row;
  private int slice;
  private byte[] held = new byte[0];

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
    int top = slice == 0 ? 0 : ends.get(slice - 1);
    int end = ends.get(slice);
    int at = row++;
    if (at == top) {
      held = new byte[rowBytes * (end - top)];
    }
    System.arraycopy(rgb, 0, held, (at - top) * rowBytes, rowBytes);
    if (at + 1 == end) {
      slice++;
      byte[] whole = held;
      held = new byte[0];
      to.slice(whole, top);
    }
  }
}
