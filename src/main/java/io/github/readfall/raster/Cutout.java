package io.github.readfall.raster;

import io.github.readfall.draw.Mark;
import io.github.readfall.geom.Box;
import io.github.readfall.render.Java2dPainter;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.List;

/**
 * A part of an outline with its tail, as what has to lie over the outline without the tail to look
 * like it: nothing where both are the same, so that no line is drawn twice and looks heavier.
 *
 * @param joined the outline with its tail, cut out round the tail
 * @param plain the outline without it
 */
record Cutout(Mark.Clip joined, List<Mark> plain) {

  private static final int OPAQUE = 255;

  /** Samples that differ by less are the same: outlines are joined to a hundred thousandth. */
  private static final int SAME = 2;

  static Cutout of(Mark.Clip joined, List<Mark> plain) {
    return new Cutout(joined, plain);
  }

  /**
   * Paints it.
   *
   * @param band alpha, red, green, blue
   * @param top where the band's first row is on the strip
   */
  void paint(BufferedImage band, int top) {
    Box box = joined.within().bounds();
    Rectangle part =
        new Rectangle(
                (int) Math.floor(box.x()),
                (int) Math.floor(box.y()) - top,
                (int) Math.ceil(box.width()) + 1,
                (int) Math.ceil(box.height()) + 1)
            .intersection(new Rectangle(band.getWidth(), band.getHeight()));
    if (part.isEmpty()) {
      return;
    }
    BufferedImage is = painted(plain, part, top);
    BufferedImage wanted = painted(List.of(joined), part, top);
    for (int y = 0; y < part.height; y++) {
      for (int x = 0; x < part.width; x++) {
        wanted.setRGB(x, y, over(is.getRGB(x, y), wanted.getRGB(x, y)));
      }
    }
    Graphics2D g = band.createGraphics();
    g.drawImage(wanted, part.x, part.y, null);
    g.dispose();
  }

  private static BufferedImage painted(List<Mark> marks, Rectangle part, int top) {
    BufferedImage image = new BufferedImage(part.width, part.height, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    g.translate(-part.x, -part.y - top);
    Java2dPainter painter = new Java2dPainter(g);
    marks.forEach(mark -> mark.paintOn(painter));
    g.dispose();
    return image;
  }

  /** The colour that makes one colour into another when it lies over it. */
  private static int over(int is, int wanted) {
    int isAlpha = is >>> 24;
    int wantedAlpha = wanted >>> 24;
    if (wantedAlpha == 0 || isSame(is, wanted)) {
      return 0;
    }
    if (wantedAlpha == OPAQUE || isAlpha == 0) {
      return wanted;
    }
    if (wantedAlpha <= isAlpha) {
      return 0; // nothing that lies over it takes colour away
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

  private static boolean isSame(int argb, int other) {
    for (int shift = 0; shift <= 24; shift += 8) {
      if (Math.abs((argb >> shift & OPAQUE) - (other >> shift & OPAQUE)) > SAME) {
        return false;
      }
    }
    return true;
  }
}
