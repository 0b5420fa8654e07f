package io.github.readfall.export.raster;

import io.github.readfall.art.RowSink;
import io.github.readfall.base.OneCall;
import io.github.readfall.draw.render.PngStream;
import java.io.Closeable;
import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Cuts rows into pictures that follow one another. */
@OneCall
final class Pieces implements RowSink, Closeable {

  private final List<Integer> ends;
  private final Opening opening;
  private int row;
  private int piece;
  private @Nullable PngStream now;

  /** Begins a picture. */
  interface Opening {

    /**
     * Opens the stream that takes it.
     *
     * @param index from 0
     * @param top its first row
     * @param rows how many it has
     */
    PngStream open(int index, int top, int rows) throws IOException;
  }

  /**
   * Cuts at some rows.
   *
   * @param ends of all pictures, rising, the last one's too
   */
  Pieces(List<Integer> ends, Opening opening) {
    this.ends = List.copyOf(ends);
    this.opening = opening;
  }

  @Override
  public void row(byte[] rgb) throws IOException {
    int top = row++;
    int end = ends.get(piece);
    PngStream png = now;
    if (png == null) {
      png = opening.open(piece, top, end - top);
      now = png;
    }
    png.row(rgb);
    if (row == end) {
      png.end();
      close();
      piece++;
    }
  }

  /** Closes a picture that was not ended. */
  @Override
  public void close() throws IOException {
    PngStream png = now;
    now = null;
    if (png != null) {
      png.close();
    }
  }
}
