package io.github.readfall.art;

import io.github.readfall.base.OneCall;
import java.io.IOException;

/** Halves a picture: each new pixel is the mean of four. */
@OneCall
final class Halving {

  private final int width;
  private final byte[] upper;
  private final byte[] made;
  private final RowSink to;
  private boolean waits;

  /** From rows of a width; an odd last pixel counts twice. */
  Halving(int width, RowSink to) {
    this.width = width;
    this.upper = new byte[3 * width];
    this.made = new byte[3 * half(width)];
    this.to = to;
  }

  static int half(int length) {
    return (length + 1) / 2;
  }

  void row(byte[] rgb) throws IOException {
    if (waits) {
      pass(rgb);
    } else {
      System.arraycopy(rgb, 0, upper, 0, upper.length);
    }
    waits = !waits;
  }

  /** Passes on an odd last row, which counts twice. */
  void end() throws IOException {
    if (waits) {
      pass(upper);
    }
    waits = false;
  }

  private void pass(byte[] lower) throws IOException {
    for (int x = 0; x < width; x += 2) {
      int left = 3 * x;
      int right = x + 1 < width ? left + 3 : left;
      for (int channel = 0; channel < 3; channel++) {
        int four =
            (upper[left + channel] & 0xff)
                + (upper[right + channel] & 0xff)
                + (lower[left + channel] & 0xff)
                + (lower[right + channel] & 0xff);
        made[3 * (x / 2) + channel] = (byte) ((four + 2) / 4);
      }
    }
    to.row(made);
  }
}
