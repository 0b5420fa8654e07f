package io.github.readfall.art;

import java.io.IOException;

/** Reads a page of art from the top as it lies on the strip. */
final class PageRows {

  private PageRows() {}

  /**
   * Hands on every row of a page, at the size that it has on the strip.
   *
   * @throws UnreadableArt where the file is broken, or of another size than it was
   * @throws IOException where the sink cannot take a row
   */
  static void pour(ArtPage page, RowSink to) throws IOException, UnreadableArt {
    try (ArtRows rows = ArtRows.open(page.file())) {
      if (rows.widthPx() != page.widthPx() || rows.heightPx() != page.heightPx()) {
        throw Unread.changed(page.file());
      }
      RowSink sink = resized(page, to);
      byte[] rgb = new byte[3 * rows.widthPx()];
      for (int y = 0; y < rows.heightPx(); y++) {
        rows.read(rgb);
        sink.row(rgb);
      }
    }
  }

  private static RowSink resized(ArtPage page, RowSink to) {
    int width = (int) page.box().width();
    int height = (int) page.box().height();
    boolean asItIs = page.widthPx() == width && page.heightPx() == height;
    return asItIs ? to : new Resampler(page.widthPx(), page.heightPx(), width, height, to);
  }
}
