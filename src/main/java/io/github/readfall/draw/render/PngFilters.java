package io.github.readfall.draw.render;

import java.util.Arrays;

/**
 * Filters the rows of a PNG so that they compress better: each is written as differences from the
 * pixels before it and above it, by the filter with the smallest differences (PNG specification,
 * third edition, 9.2 "Filter types", 12.7 "Filter selection").
 */
final class PngFilters {

  private static final byte SUB = 1;
  private static final byte UP = 2;
  private static final byte PAETH = 4;

  private final int length;
  private final int pixel;
  private final byte[] above;
  private final byte[] now;
  private final byte[] sub;
  private final byte[] up;
  private final byte[] paeth;

  /**
   * A filter for rows of one length.
   *
   * @param length in bytes
   * @param pixel bytes of a pixel
   */
  PngFilters(int length, int pixel) {
    this.length = length;
    this.pixel = pixel;
    this.above = new byte[pixel + length]; // a pixel of zeros precedes each row
    this.now = new byte[pixel + length];
    this.sub = tagged(SUB);
    this.up = tagged(UP);
    this.paeth = tagged(PAETH);
  }

  private byte[] tagged(byte type) {
    byte[] row = new byte[1 + length];
    row[0] = type;
    return row;
  }

  /** The filtered row, its type first; overwritten by the next. */
  byte[] filtered(byte[] row) {
    System.arraycopy(row, 0, now, pixel, length);
    byte[] best = Arrays.equals(now, above) ? same() : smallest();
    System.arraycopy(row, 0, above, pixel, length);
    return best;
  }

  private byte[] same() {
    Arrays.fill(up, 1, up.length, (byte) 0);
    return up;
  }

  private byte[] smallest() {
    for (int i = 1; i <= length; i++) {
      sub[i] = (byte) (now[pixel + i - 1] - now[i - 1]);
    }
    for (int i = 1; i <= length; i++) {
      up[i] = (byte) (now[pixel + i - 1] - above[pixel + i - 1]);
    }
    for (int i = 1; i <= length; i++) {
      int at = pixel + i - 1;
      int guess = paeth(now[at - pixel] & 0xff, above[at] & 0xff, above[at - pixel] & 0xff);
      paeth[i] = (byte) (now[at] - guess);
    }
    byte[] best = size(sub) <= size(up) ? sub : up;
    return size(best) <= size(paeth) ? best : paeth;
  }

  private static int paeth(int left, int above, int aboveLeft) {
    int byLeft = Math.abs(above - aboveLeft);
    int byAbove = Math.abs(left - aboveLeft);
    int byAboveLeft = Math.abs(left + above - 2 * aboveLeft);
    if (byLeft <= byAbove && byLeft <= byAboveLeft) {
      return left;
    }
    return byAbove <= byAboveLeft ? above : aboveLeft;
  }

  /** Sum of the differences, taken as signed. */
  private static int size(byte[] filtered) {
    int sum = 0;
    for (int i = 1; i < filtered.length; i++) {
      sum += Math.abs(filtered[i]);
    }
    return sum;
  }
}
