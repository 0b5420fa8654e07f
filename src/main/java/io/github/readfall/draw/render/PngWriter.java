package io.github.readfall.draw.render;

import io.github.readfall.draw.Drawing;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Arrays;

/** Writes a drawing as PNG, with its resolution. */
public final class PngWriter {

  private static final int BAND_ROWS = 256;

  private PngWriter() {}

  /**
   * Writes band by band, so that a drawing of any height needs the memory of one band.
   *
   * @param dpi resolution to be stated in the file
   * @param out stays open
   * @throws IOException if the stream cannot be written
   */
  public static void write(Drawing drawing, int dpi, OutputStream out) throws IOException {
    int widthPx = drawing.widthPx();
    int heightPx = drawing.heightPx();
    Reaches reaches = Reaches.of(drawing.marks(), heightPx);
    BandPainter painter = new BandPainter(reaches, widthPx, BAND_ROWS);
    byte[] paper = paper(drawing);
    byte[] band = new byte[BAND_ROWS * paper.length];
    try (PngStream png =
        new PngStream(new Kept(out), widthPx, heightPx, PngStream.Samples.RGB, dpi)) {
      for (int top = 0; top < heightPx; top += BAND_ROWS) {
        int rows = Math.min(BAND_ROWS, heightPx - top);
        for (int y = 0; y < rows; y++) {
          System.arraycopy(paper, 0, band, y * paper.length, paper.length);
        }
        painter.paint(band, top, rows);
        for (int y = 0; y < rows; y++) {
          png.row(Arrays.copyOfRange(band, y * paper.length, (y + 1) * paper.length));
        }
      }
      png.end();
    }
  }

  private static byte[] paper(Drawing drawing) {
    byte[] row = new byte[3 * drawing.widthPx()];
    int rgb = drawing.paper().rgb();
    for (int i = 0; i < row.length; i += 3) {
      row[i] = (byte) (rgb >> 16);
      row[i + 1] = (byte) (rgb >> 8);
      row[i + 2] = (byte) rgb;
    }
    return row;
  }

  /** A stream that its owner closes. */
  private static final class Kept extends FilterOutputStream {
    Kept(OutputStream out) {
      super(out);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
      out.write(bytes, from, length);
    }

    @Override
    public void close() throws IOException {
      flush();
    }
  }
}
