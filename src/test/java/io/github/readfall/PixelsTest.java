package io.github.readfall;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.awt.image.BufferedImage;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PixelsTest {

  @ParameterizedTest
  @ValueSource(
      ints = {
        BufferedImage.TYPE_INT_RGB,
        BufferedImage.TYPE_INT_ARGB,
        BufferedImage.TYPE_3BYTE_BGR,
        BufferedImage.TYPE_4BYTE_ABGR,
        BufferedImage.TYPE_BYTE_GRAY,
        BufferedImage.TYPE_BYTE_INDEXED
      })
  void theyAreWhatThePictureSaysPixelByPixel(int type) {
    BufferedImage image = new BufferedImage(7, 5, type);
    SplittableRandom random = new SplittableRandom(type);
    int[] expected = new int[7 * 5];
    for (int i = 0; i < expected.length; i++) {
      image.setRGB(i % 7, i / 7, random.nextInt());
      expected[i] = image.getRGB(i % 7, i / 7);
    }
    assertArrayEquals(expected, Pixels.of(image));
  }
}
