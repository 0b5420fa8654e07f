package io.github.readfall.draw.render;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * Writes a PNG row by row, so that one of any height needs the memory of a few rows: eight bits a
 * sample, sRGB, its resolution stated (PNG specification, third edition, 11.2, 11.3).
 */
public final class PngStream implements Closeable {

  private static final long SIGNATURE = 0x89504E470D0A1A0AL;
  private static final int COLOUR = 2;
  private static final int COLOUR_AND_ALPHA = 6;
  private static final int PERCEPTUAL = 0;
  private static final int METRE = 1;
  private static final double INCHES_PER_METRE = 1 / 0.0254;
  private static final int CHUNK_BYTES = 1 << 16;

  private final OutputStream out;
  private final int heightPx;
  private final PngFilters filters;
  private final Deflater deflater = new Deflater();
  private final byte[] packed = new byte[CHUNK_BYTES];
  private final int[] filled = {0};
  private final int[] rows = {0};

  /** The samples of a pixel. */
  public enum Samples {
    RGB(3, COLOUR),
    RGBA(4, COLOUR_AND_ALPHA);

    private final int count;
    private final int colourType;

    Samples(int count, int colourType) {
      this.count = count;
      this.colourType = colourType;
    }

    /** The number of samples of a pixel. */
    public int count() {
      return count;
    }
  }

  /**
   * Begins a picture.
   *
   * @param out closed with this
   * @param widthPx positive
   * @param heightPx positive
   * @param dpi resolution to be stated; positive
   * @throws IOException if the stream cannot be written
   */
  public PngStream(OutputStream out, int widthPx, int heightPx, Samples samples, int dpi)
      throws IOException {
    this.out = out;
    this.heightPx = heightPx;
    this.filters = new PngFilters(widthPx * samples.count(), samples.count());
    out.write(ByteBuffer.allocate(Long.BYTES).putLong(SIGNATURE).array());
    ByteBuffer header = ByteBuffer.allocate(13).putInt(widthPx).putInt(heightPx);
    chunk("IHDR", header.put((byte) 8).put((byte) samples.colourType).array(), 13);
    chunk("sRGB", new byte[] {PERCEPTUAL}, 1);
    int perMetre = (int) Math.round(dpi * INCHES_PER_METRE);
    ByteBuffer size = ByteBuffer.allocate(9).putInt(perMetre).putInt(perMetre);
    chunk("pHYs", size.put((byte) METRE).array(), 9);
  }

  /**
   * Takes the next row.
   *
   * @param samples from the left, those of a pixel together; not changed, not kept
   * @throws IOException if the stream cannot be written
   * @throws IllegalStateException if there are more rows than promised
   */
  public void row(byte[] samples) throws IOException {
    if (rows[0]++ == heightPx) {
      throw new IllegalStateException("more rows than " + heightPx);
    }
    byte[] filtered = filters.filtered(samples);
    deflater.setInput(filtered);
    while (!deflater.needsInput()) {
      deflate();
    }
  }

  private void deflate() throws IOException {
    filled[0] += deflater.deflate(packed, filled[0], packed.length - filled[0]);
    if (filled[0] == packed.length) {
      chunk("IDAT", packed, filled[0]);
      filled[0] = 0;
    }
  }

  /**
   * Ends the picture.
   *
   * @throws IOException if the stream cannot be written
   * @throws IllegalStateException if there were fewer rows than promised
   */
  public void end() throws IOException {
    if (rows[0] != heightPx) {
      throw new IllegalStateException(rows[0] + " rows of " + heightPx);
    }
    deflater.finish();
    while (!deflater.finished()) {
      deflate();
    }
    chunk("IDAT", packed, filled[0]);
    chunk("IEND", packed, 0);
  }

  private void chunk(String type, byte[] data, int length) throws IOException {
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    CRC32 check = new CRC32();
    check.update(name);
    check.update(data, 0, length);
    out.write(ByteBuffer.allocate(Integer.BYTES).putInt(length).array());
    out.write(name);
    out.write(data, 0, length);
    out.write(ByteBuffer.allocate(Integer.BYTES).putInt((int) check.getValue()).array());
  }

  /** Releases its resources, and closes the stream. */
  @Override
  public void close() throws IOException {
    deflater.end();
    out.close();
  }
}
