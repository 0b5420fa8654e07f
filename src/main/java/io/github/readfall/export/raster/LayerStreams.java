package io.github.readfall.export.raster;

import io.github.readfall.draw.render.PngStream;
import java.io.Closeable;
import java.io.IOException;
import java.util.Map;

/**
 * The pictures of one page's layers, being written side by side.
 *
 * @param widthPx of all of them
 * @param streams filled on the way
 */
record LayerStreams(int widthPx, Map<LetteringLayer, PngStream> streams) implements Closeable {

  void add(LetteringLayer layer, PngStream stream) {
    streams.put(layer, stream);
  }

  /** Writes the rows that were painted last. */
  void rows(LayerPainter painter, int rows) throws IOException {
    byte[] rgba = new byte[4 * widthPx];
    for (Map.Entry<LetteringLayer, PngStream> stream : streams.entrySet()) {
      int[] pixels = painter.pixels(stream.getKey());
      for (int y = 0; y < rows; y++) {
        samples(pixels, y * widthPx, rgba);
        stream.getValue().row(rgba);
      }
    }
  }

  private void samples(int[] pixels, int from, byte[] rgba) {
    for (int x = 0; x < widthPx; x++) {
      int argb = pixels[from + x];
      rgba[4 * x] = (byte) (argb >> 16);
      rgba[4 * x + 1] = (byte) (argb >> 8);
      rgba[4 * x + 2] = (byte) argb;
      rgba[4 * x + 3] = (byte) (argb >>> 24);
    }
  }

  void end() throws IOException {
    for (PngStream stream : streams.values()) {
      stream.end();
    }
  }

  @Override
  public void close() throws IOException {
    for (PngStream stream : streams.values()) {
      stream.close();
    }
  }
}
