package io.github.readfall.export.raster;

import io.github.readfall.art.RowSink;
import java.io.IOException;

/** Gathers rows into bands. */
final class RowBands implements RowSink {

  private final int rowBytes;
  private final byte[] band;
  private final Sink to;
  private final int[] top = {0};
  private final int[] held = {0};

  /** Takes bands from the top. */
  interface Sink {

    /**
     * Takes a band.
     *
     * @param rgb its rows one after another; may be changed
     * @param top the first row's place
     * @param rows how many
     */
    void band(byte[] rgb, int top, int rows) throws IOException;
  }

  RowBands(int widthPx, int rows, Sink to) {
    this.rowBytes = 3 * widthPx;
    this.band = new byte[rows * rowBytes];
    this.to = to;
  }

  /** The number of rows so far. */
  int height() {
    return top[0] + held[0];
  }

  @Override
  public void row(byte[] rgb) throws IOException {
    System.arraycopy(rgb, 0, band, held[0] * rowBytes, rowBytes);
    held[0]++;
    if (held[0] * rowBytes == band.length) {
      end();
    }
  }

  /** Passes on the last band, which may be lower. */
  void end() throws IOException {
    if (held[0] > 0) {
      to.band(band, top[0], held[0]);
      top[0] += held[0];
      held[0] = 0;
    }
  }
}
