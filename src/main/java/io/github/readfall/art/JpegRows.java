package io.github.readfall.art;

import io.github.readfall.base.OneCall;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.IIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.stream.ImageInputStream;

/**
 * Reads a JPEG in bands. Each band costs a run through the file from its start, so bands are as
 * tall as memory allows.
 */
@OneCall
final class JpegRows implements ArtRows {

  private static final int BAND_PX = 12_000_000;

  /**
   * Part of libjpeg's warning about a file that ends too early; libjpeg fills the rest with grey.
   */
  private static final String TOO_SHORT = "premature end";

  private final Path file;
  private final ImageReader reader;
  private final ImageInputStream stream;
  private final int widthPx;
  private final int heightPx;
  private final int bandRows;
  private int next;
  private boolean tooShort;
  private Optional<BufferedImage> band = Optional.empty();

  private JpegRows(
      Path file, ImageReader reader, ImageInputStream stream, int widthPx, int heightPx) {
    this.file = file;
    this.reader = reader;
    this.stream = stream;
    this.widthPx = widthPx;
    this.heightPx = heightPx;
    this.bandRows = Math.max(1, Math.min(heightPx, BAND_PX / widthPx));
    reader.addIIOReadWarningListener((source, warning) -> tooShort |= warning.contains(TOO_SHORT));
  }

  static JpegRows open(Path file) throws UnreadableArt {
    ImageReader reader = ImageIO.getImageReadersByFormatName("jpeg").next();
    try {
      ImageInputStream stream = ImageIO.createImageInputStream(file.toFile());
      if (stream == null) {
        throw UnreadableReason.closed(file);
      }
      return of(file, reader, stream);
    } catch (IIOException e) {
      throw UnreadableReason.broken(file);
    } catch (IOException e) {
      throw UnreadableReason.closed(file);
    }
  }

  private static JpegRows of(Path file, ImageReader reader, ImageInputStream stream)
      throws IOException, UnreadableArt {
    try {
      reader.setInput(stream, false, true);
      int widthPx = reader.getWidth(0);
      int heightPx = reader.getHeight(0);
      UnreadableReason.checkSize(file, widthPx, heightPx);
      Iterator<ImageTypeSpecifier> types = reader.getImageTypes(0);
      if (!types.hasNext() || !isForScreens(types.next().getNumBands())) {
        throw UnreadableReason.foreignColours(file);
      }
      return new JpegRows(file, reader, stream, widthPx, heightPx);
    } catch (IOException | UnreadableArt e) {
      reader.dispose();
      stream.close();
      throw e;
    }
  }

  /** Returns true for grey, and for red, green and blue. */
  private static boolean isForScreens(int samples) {
    return samples == 1 || samples == 3;
  }

  @Override
  public int widthPx() {
    return widthPx;
  }

  @Override
  public int heightPx() {
    return heightPx;
  }

  @Override
  public void read(byte[] rgb) throws UnreadableArt {
    int row = next++;
    if (row >= heightPx) {
      throw new IllegalStateException("no more rows in " + file);
    }
    if (row % bandRows == 0) {
      band = Optional.empty(); // frees its memory before the next is read
      band = Optional.of(band(row));
    }
    copy(band.orElseThrow(() -> UnreadableReason.broken(file)), row % bandRows, rgb);
  }

  private BufferedImage band(int top) throws UnreadableArt {
    try {
      ImageReadParam part = reader.getDefaultReadParam();
      int rows = Math.min(bandRows, heightPx - top);
      part.setSourceRegion(new Rectangle(0, top, widthPx, rows));
      BufferedImage read = reader.read(0, part);
      if (tooShort) {
        throw UnreadableReason.broken(file);
      }
      return read;
    } catch (IOException | RuntimeException e) { // a damaged file upsets the decoder in many ways
      throw UnreadableReason.broken(file);
    }
  }

  /** Copies samples as they are: a conversion would take grey for linear light. */
  private void copy(BufferedImage image, int y, byte[] rgb) {
    Raster raster = image.getRaster();
    int bands = raster.getNumBands();
    int[] samples = raster.getPixels(0, y, widthPx, 1, (int[]) null);
    for (int x = 0; x < widthPx; x++) {
      for (int channel = 0; channel < 3; channel++) {
        rgb[3 * x + channel] = (byte) samples[bands * x + Math.min(channel, bands - 1)];
      }
    }
  }

  @Override
  public void close() {
    reader.dispose();
    try {
      stream.close();
    } catch (IOException e) {
      // nothing more is read from it
    }
  }
}
