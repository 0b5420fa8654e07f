package io.github.readfall.art.panels;

/** Arithmetic with colours of eight bits for each of red, green and blue. */
final class Colours {

  private Colours() {}

  /** The greatest difference in any of the three, in levels. */
  static int distance(int one, int other) {
    int red = Math.abs((one >> 16 & 0xff) - (other >> 16 & 0xff));
    int green = Math.abs((one >> 8 & 0xff) - (other >> 8 & 0xff));
    int blue = Math.abs((one & 0xff) - (other & 0xff));
    return Math.max(red, Math.max(green, blue));
  }

  /** The colour half way from one to the other, a half rounded towards the other. */
  static int between(int one, int other) {
    return half(one, other, 16) << 16 | half(one, other, 8) << 8 | half(one, other, 0);
  }

  private static int half(int one, int other, int shift) {
    int from = one >> shift & 0xff;
    int to = other >> shift & 0xff;
    return (from + to + (to > from ? 1 : 0)) / 2;
  }

  /** The colour of a pixel in a row of bytes. */
  static int at(byte[] rgb, int x) {
    return (rgb[3 * x] & 0xff) << 16 | (rgb[3 * x + 1] & 0xff) << 8 | (rgb[3 * x + 2] & 0xff);
  }
}
