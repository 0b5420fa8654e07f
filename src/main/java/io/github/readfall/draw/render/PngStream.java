package io.github.readfall.draw.render;

import ar.com.hjg.pngj.FilterType;
import ar.com.hjg.pngj.ImageInfo;
import ar.com.hjg.pngj.ImageLineByte;
import ar.com.hjg.pngj.PngWriter;
import ar.com.hjg.pngj.PngjException;
import ar.com.hjg.pngj.chunks.PngChunkSRGB;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;

/**
 * Writes a PNG row by row, so that one of any height needs the memory of a few rows: eight bits a
 * sample, sRGB, its resolution stated (PNG specification, third edition, 11.2, 11.3).
 */
public final class PngStream implements Closeable {

  private static final int SAMPLE_BITS = 8;

  private final OutputStream out;
  private final ImageInfo size;
  private final PngWriter png;

  /** The samples of a pixel. */
  public enum Samples {
    RGB,
    RGBA
  }

  /**
   * Begins a picture.
   *
   * @param out closed with this
   * @param widthPx positive
   * @param heightPx positive
   * @param dpi resolution to be stated; positive
   */
  public PngStream(OutputStream out, int widthPx, int heightPx, Samples samples, int dpi) {
    this.out = out;
    this.size = new ImageInfo(widthPx, heightPx, SAMPLE_BITS, samples == Samples.RGBA);
    this.png = new PngWriter(out, size);
    png.setShouldCloseStream(false);
    png.setFilterType(FilterType.FILTER_ADAPTIVE_FAST);
    PngChunkSRGB colours = new PngChunkSRGB(size);
    colours.setIntent(PngChunkSRGB.RENDER_INTENT_Perceptual);
    png.getMetadata().queueChunk(colours);
    png.getMetadata().setDpi(dpi);
  }

  /**
   * Takes the next row.
   *
   * @param samples from the left, those of a pixel together; not changed, not kept
   * @throws IOException if the stream cannot be written, or there are more rows than promised
   */
  public void row(byte[] samples) throws IOException {
    try {
      png.writeRow(new ImageLineByte(size, samples));
    } catch (PngjException e) {
      throw fault(e);
    }
  }

  /**
   * Ends the picture.
   *
   * @throws IOException if the stream cannot be written, or there were fewer rows than promised
   */
  public void end() throws IOException {
    try {
      png.end();
    } catch (PngjException e) {
      throw fault(e);
    }
  }

  /** The stream's own fault, which says more of the disk than the encoder does. */
  private static IOException fault(PngjException e) {
    return e.getCause() instanceof IOException cause ? cause : new IOException(e);
  }

  /** Releases its resources, and closes the stream. */
  @Override
  public void close() throws IOException {
    png.close();
    out.close();
  }
}
