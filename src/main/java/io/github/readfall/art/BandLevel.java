package io.github.readfall.art;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReferenceArray;

/** The art at one size, in bands that are written from the top and read in any order. */
final class BandLevel implements RowSink {

  static final int BAND_ROWS = 128;

  private final BandFile file;
  private final int width;
  private final int height;
  private final AtomicReferenceArray<BandFile.Place> places;
  private final byte[] band;
  private final AtomicInteger taken = new AtomicInteger();
  private final AtomicInteger ready = new AtomicInteger();
  private final Optional<Halving> smaller;

  /**
   * A size, empty as yet.
   *
   * @param smaller the next smaller size, which is made from this one
   */
  BandLevel(BandFile file, int width, int height, Optional<BandLevel> smaller) {
    this.file = file;
    this.width = width;
    this.height = height;
    this.places = new AtomicReferenceArray<>((height + BAND_ROWS - 1) / BAND_ROWS);
    this.band = new byte[3 * width * BAND_ROWS];
    this.smaller = smaller.map(level -> new Halving(width, level));
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  /** The number of rows from the top that can be read. */
  int readyRows() {
    return ready.get();
  }

  @Override
  public void row(byte[] rgb) throws IOException {
    int row = taken.getAndIncrement();
    if (row >= height) {
      return; // a half row too many where sizes are odd
    }
    int at = row % BAND_ROWS * 3 * width;
    System.arraycopy(rgb, 0, band, at, 3);
    for (int i = 3; i < 3 * width; i++) { // differences compress better if colours hardly change
      band[at + i] = (byte) (rgb[i] - rgb[i - 3]);
    }
    if ((row + 1) % BAND_ROWS == 0 || row + 1 == height) {
      int rows = row % BAND_ROWS + 1;
      places.set(row / BAND_ROWS, file.write(band, 3 * width * rows));
      ready.set(row + 1);
    }
    if (smaller.isPresent()) {
      smaller.get().row(rgb);
    }
  }

  /** Ends the smaller size if the number of rows is odd. */
  void end() throws IOException {
    if (smaller.isPresent()) {
      smaller.get().end();
    }
  }

  /** A band, if it has been written. */
  Optional<BufferedImage> band(int index) throws IOException {
    BandFile.Place place = places.get(index);
    if (place == null) {
      return Optional.empty();
    }
    int rows = Math.min(BAND_ROWS, height - index * BAND_ROWS);
    byte[] bytes = new byte[3 * width * rows];
    file.read(place, bytes);
    BufferedImage image = new BufferedImage(width, rows, BufferedImage.TYPE_INT_RGB);
    int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    for (int y = 0; y < rows; y++) {
      unpack(bytes, y, pixels);
    }
    return Optional.of(image);
  }

  private void unpack(byte[] bytes, int y, int[] pixels) {
    int red = 0;
    int green = 0;
    int blue = 0;
    int at = 3 * width * y;
    for (int x = 0; x < width; x++, at += 3) {
      red = red + bytes[at] & 0xff;
      green = green + bytes[at + 1] & 0xff;
      blue = blue + bytes[at + 2] & 0xff;
      pixels[y * width + x] = red << 16 | green << 8 | blue;
    }
  }
}
