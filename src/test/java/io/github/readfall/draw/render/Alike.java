package io.github.readfall.draw.render;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.readfall.Pixels;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;

/** Compares pictures of one size, wherever they come from. */
public final class Alike {

  private static final int CHANNELS = 3;
  private static final int MOST = 255;

  private Alike() {}

  /** Mean difference of red, green and blue, as a share of their range; transparency left out. */
  public static double meanDifference(BufferedImage a, BufferedImage b) {
    sameSize(a, b);
    int[] p = Pixels.of(a);
    int[] q = Pixels.of(b);
    long sum = 0;
    for (int i = 0; i < p.length; i++) {
      if (p[i] != q[i]) {
        for (int shift = 0; shift <= 16; shift += 8) {
          sum += Math.abs((p[i] >> shift & MOST) - (q[i] >> shift & MOST));
        }
      }
    }
    return sum / ((double) CHANNELS * MOST * p.length);
  }

  /** The most that one sample differs by, of 255; transparency is a sample too. */
  public static int farthest(BufferedImage a, BufferedImage b) {
    sameSize(a, b);
    int[] p = Pixels.of(a);
    int[] q = Pixels.of(b);
    int most = 0;
    for (int i = 0; i < p.length; i++) {
      most = p[i] == q[i] ? most : Math.max(most, farthest(p[i], q[i]));
    }
    return most;
  }

  /** The most that one sample of two colours differs by, of 255. */
  public static int farthest(int argb, int other) {
    int most = 0;
    for (int shift = 0; shift <= 24; shift += 8) {
      most = Math.max(most, Math.abs((argb >> shift & MOST) - (other >> shift & MOST)));
    }
    return most;
  }

  /** Where they differ most: for the message of a check that fails. */
  public static Point worst(BufferedImage a, BufferedImage b) {
    int[] p = Pixels.of(a);
    int[] q = Pixels.of(b);
    int worst = 0;
    for (int i = 0; i < p.length; i++) {
      worst = farthest(p[i], q[i]) > farthest(p[worst], q[worst]) ? i : worst;
    }
    return new Point(worst % a.getWidth(), worst / a.getWidth());
  }

  private static void sameSize(BufferedImage a, BufferedImage b) {
    assertEquals(a.getWidth(), b.getWidth(), "width");
    assertEquals(a.getHeight(), b.getHeight(), "height");
  }

  /** The picture without transparency, over a colour. */
  public static BufferedImage over(Color paper, BufferedImage image) {
    BufferedImage plain =
        new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = plain.createGraphics();
    g.setColor(paper);
    g.fillRect(0, 0, plain.getWidth(), plain.getHeight());
    g.drawImage(image, 0, 0, null);
    g.dispose();
    return plain;
  }

  /** A part of a picture, its own from now on. */
  public static BufferedImage part(BufferedImage image, Rectangle box) {
    BufferedImage part = new BufferedImage(box.width, box.height, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = part.createGraphics();
    g.drawImage(image, -box.x, -box.y, null);
    g.dispose();
    return part;
  }

  /**
   * The middle of the ink: each pixel counts as it is darker than white. Two renderings of the same
   * letters have it in the same place, to some hundredths of a pixel.
   *
   * @throws IllegalArgumentException where there is no ink
   */
  public static Point2D.Double middleOfInk(BufferedImage image) {
    int[] pixels = Pixels.of(image);
    double sum = 0;
    double sumX = 0;
    double sumY = 0;
    for (int i = 0; i < pixels.length; i++) {
      double ink = ink(pixels[i]);
      sum += ink;
      int row = i / image.getWidth();
      sumX += ink * (i - row * image.getWidth() + 0.5);
      sumY += ink * (row + 0.5);
    }
    if (sum == 0) {
      throw new IllegalArgumentException("no ink");
    }
    return new Point2D.Double(sumX / sum, sumY / sum);
  }

  /** How far the ink of one picture has moved from where another has it, in pixels. */
  public static double shiftPx(BufferedImage a, BufferedImage b) {
    sameSize(a, b);
    return middleOfInk(a).distance(middleOfInk(b));
  }

  private static double ink(int argb) {
    int alpha = argb >>> 24;
    int sum = (argb >> 16 & MOST) + (argb >> 8 & MOST) + (argb & MOST);
    return alpha * (CHANNELS * MOST - sum) / ((double) CHANNELS * MOST * MOST);
  }
}
