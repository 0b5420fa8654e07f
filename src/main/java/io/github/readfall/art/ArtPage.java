package io.github.readfall.art;

import io.github.readfall.base.geom.Box;
import java.io.IOException;
import java.nio.file.Path;

/**
 * A page of art in its place on the strip.
 *
 * @param file of the page
 * @param widthPx of the file, in its own pixels
 * @param heightPx of the file, in its own pixels
 * @param box on the strip, as wide as the strip, in whole strip pixels
 */
public record ArtPage(Path file, int widthPx, int heightPx, Box box) {

  /**
   * Reads the page, once, from the top, at its size on the strip.
   *
   * @param to takes its rows
   * @throws UnreadableArt if the file is damaged, or no longer what it was
   * @throws IOException if the sink fails
   */
  public void pour(RowSink to) throws IOException, UnreadableArt {
    try (ArtRows rows = ArtRows.open(file)) {
      if (rows.widthPx() != widthPx || rows.heightPx() != heightPx) {
        throw UnreadableReason.changed(file);
      }
      RowSink sink = resized(to);
      byte[] rgb = new byte[3 * widthPx];
      for (int y = 0; y < heightPx; y++) {
        rows.read(rgb);
        sink.row(rgb);
      }
    }
  }

  /**
   * Returns true for a JPEG that is on the strip pixel for pixel, not turned.
   *
   * @throws UnreadableArt if it cannot be read
   */
  public boolean isJpegAsItIs() throws UnreadableArt {
    boolean asItIs = widthPx == (int) box.width() && heightPx == (int) box.height();
    return asItIs && ArtRows.isJpeg(file) && Orientation.of(file) == Orientation.UPRIGHT;
  }

  private RowSink resized(RowSink to) {
    int width = (int) box.width();
    int height = (int) box.height();
    boolean asItIs = widthPx == width && heightPx == height;
    return asItIs ? to : new Resampler(widthPx, heightPx, width, height, to);
  }
}
