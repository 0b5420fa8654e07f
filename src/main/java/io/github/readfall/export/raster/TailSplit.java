package io.github.readfall.export.raster;

import io.github.readfall.base.geom.Box;
import io.github.readfall.draw.Mark;
import io.github.readfall.draw.render.Java2dPainter;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.Arrays;
import java.util.List;

/**
 * Divides an outline that is joined with its tail into two layers: the outline without the tail,
 * and what has to be laid over it to look like the joined one. If both are the same, that is
 * nothing, so no line is drawn twice and looks heavier.
 */
final class TailSplit {

  private static final int OPAQUE = 255;

  private final BufferedImage joined;
  private final BufferedImage plain;

  /** A split for bands of one size. */
  TailSplit(int widthPx, int rows) {
    this.joined = new BufferedImage(widthPx, rows, BufferedImage.TYPE_INT_ARGB);
    this.plain = new BufferedImage(widthPx, rows, BufferedImage.TYPE_INT_ARGB);
  }

  /**
   * Paints both layers of one outline.
   *
   * @param cutOut the joined outline, cut out round its tail
   * @param without the outline without its tail
   * @param top of the bands on the strip
   * @param balloons takes the one
   * @param tails takes the other
   */
  void paint(
      Mark.Clip cutOut, List<Mark> without, int top, BufferedImage balloons, BufferedImage tails) {
    paint(cutOut.marks(), joined, top);
    paint(without, plain, top);
    Rectangle part = part(cutOut.within().bounds(), top);
    if (!part.isEmpty()) {
      exchange(mask(cutOut.within().toShape(), part, top), part);
    } else {
      Arrays.fill(pixels(plain), 0);
    }
    lay(joined, balloons);
    lay(plain, tails);
  }

  private static void paint(List<Mark> marks, BufferedImage band, int top) {
    Arrays.fill(pixels(band), 0);
    Graphics2D g = band.createGraphics();
    g.translate(0, -top);
    Java2dPainter painter = new Java2dPainter(g);
    marks.forEach(mark -> mark.paintOn(painter));
    g.dispose();
  }

  private Rectangle part(Box box, int top) {
    int left = (int) Math.floor(box.x());
    int upper = (int) Math.floor(box.y()) - top;
    int right = (int) Math.ceil(box.right());
    int lower = (int) Math.ceil(box.bottom()) - top;
    return new Rectangle(left, upper, right - left, lower - upper)
        .intersection(new Rectangle(joined.getWidth(), joined.getHeight()));
  }

  /**
   * Divides the pixels: outside the tail's surroundings everything goes into the one layer and
   * nothing into the other; within them, the plain outline into the one and the difference into the
   * other.
   */
  private void exchange(int[] mask, Rectangle part) {
    int[] one = pixels(joined);
    int[] other = pixels(plain);
    int[] kept = new int[mask.length];
    for (int at = 0; at < mask.length; at++) {
      int i = (part.y + at / part.width) * joined.getWidth() + part.x + at % part.width;
      if (mask[at] != 0 && canBecome(other[i], one[i])) {
        kept[at] = over(other[i], one[i]);
        one[i] = other[i];
      }
    }
    Arrays.fill(other, 0);
    for (int y = 0; y < part.height; y++) {
      int to = (part.y + y) * joined.getWidth() + part.x;
      System.arraycopy(kept, y * part.width, other, to, part.width);
    }
  }

  /** A mask of the pixels whose middle is inside an outline, row by row: others are 0. */
  private static int[] mask(Shape within, Rectangle part, int top) {
    BufferedImage mask = new BufferedImage(part.width, part.height, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = mask.createGraphics();
    g.translate(-part.x, -part.y - top);
    g.setColor(Color.BLACK);
    g.fill(within);
    g.dispose();
    return pixels(mask);
  }

  /**
   * Returns true if something laid over a colour can make it look like another: nothing takes away.
   */
  private static boolean canBecome(int is, int wanted) {
    int isAlpha = is >>> 24;
    int wantedAlpha = wanted >>> 24;
    return is == wanted || wantedAlpha == OPAQUE || wantedAlpha > isAlpha;
  }

  private static void lay(BufferedImage band, BufferedImage onto) {
    Graphics2D g = onto.createGraphics();
    g.drawImage(band, 0, 0, null);
    g.dispose();
  }

  private static int[] pixels(BufferedImage band) {
    return ((DataBufferInt) band.getRaster().getDataBuffer()).getData();
  }

  /** The colour that makes one colour into another when it is laid over it. */
  private static int over(int is, int wanted) {
    int isAlpha = is >>> 24;
    int wantedAlpha = wanted >>> 24;
    if (is == wanted) {
      return 0;
    }
    if (wantedAlpha == OPAQUE || isAlpha == 0) {
      return wanted;
    }
    double alpha = 1 - (double) (OPAQUE - wantedAlpha) / (OPAQUE - isAlpha);
    int colour = (int) Math.round(OPAQUE * alpha) << 24;
    for (int shift = 0; shift <= 16; shift += 8) {
      double of = (wanted >> shift & OPAQUE) * (double) wantedAlpha / OPAQUE;
      double behind = (is >> shift & OPAQUE) * (double) isAlpha / OPAQUE * (1 - alpha);
      long sample = Math.round((of - behind) / alpha);
      colour |= (int) Math.max(0, Math.min(OPAQUE, sample)) << shift;
    }
    return colour;
  }
}
