package io.github.readfall;

import java.awt.image.BufferedImage;

/**
 * The pixels of a picture as numbers. Asking for them one by one takes ten times as long, for each
 * goes through the colour model.
 */
public final class Pixels {

  private Pixels() {}

  /** All of them, row by row from the top left, as 0xAARRGGBB: what {@code getRGB} says. */
  public static int[] of(BufferedImage image) {
    int width = image.getWidth();
    int height = image.getHeight();
    return switch (image.getType()) {
      case BufferedImage.TYPE_INT_ARGB -> (int[]) samples(image);
      case BufferedImage.TYPE_INT_RGB -> opaque((int[]) samples(image));
      case BufferedImage.TYPE_3BYTE_BGR -> opaque(packed((byte[]) samples(image), 3));
      case BufferedImage.TYPE_4BYTE_ABGR -> packed((byte[]) samples(image), 4);
      default -> image.getRGB(0, 0, width, height, null, 0, width);
    };
  }

  /** A copy: of each pixel one number, or red, green, blue and maybe alpha. */
  private static Object samples(BufferedImage image) {
    return image.getRaster().getDataElements(0, 0, image.getWidth(), image.getHeight(), null);
  }

  private static int[] opaque(int[] rgb) {
    for (int i = 0; i < rgb.length; i++) {
      rgb[i] |= 0xff000000;
    }
    return rgb;
  }

  private static int[] packed(byte[] samples, int of) {
    int[] pixels = new int[samples.length / of];
    for (int i = 0; i < pixels.length; i++) {
      int at = i * of;
      int alpha = of == 4 ? samples[at + 3] << 24 : 0;
      pixels[i] =
          alpha
              | (samples[at] & 0xff) << 16
              | (samples[at + 1] & 0xff) << 8
              | (samples[at + 2] & 0xff);
    }
    return pixels;
  }
}
