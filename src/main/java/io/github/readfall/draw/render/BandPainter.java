package io.github.readfall.draw.render;

import io.github.readfall.draw.Mark;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.List;

/** Paints marks over rows of a long picture, some rows at a time. */
public final class BandPainter {

  private final Reaches marks;
  private final int widthPx;
  private final BufferedImage band;

  /**
   * A painter of a picture of a width.
   *
   * @param widthPx positive
   * @param mostRows most rows painted at a time; positive
   */
  public BandPainter(Reaches marks, int widthPx, int mostRows) {
    this.marks = marks;
    this.widthPx = widthPx;
    this.band = new BufferedImage(widthPx, mostRows, BufferedImage.TYPE_3BYTE_BGR);
  }

  /**
   * Paints some rows.
   *
   * @param rgb the rows one after another, red, green, blue; painted over
   * @param top the first row's place in the picture
   * @param rows their number; not more than at a time
   */
  public void paint(byte[] rgb, int top, int rows) {
    List<Mark> here = marks.between(top, top + rows);
    if (here.isEmpty()) {
      return;
    }
    byte[] bgr = ((DataBufferByte) band.getRaster().getDataBuffer()).getData();
    swap(rgb, bgr, rows);
    Graphics2D g = band.createGraphics();
    g.clipRect(0, 0, widthPx, rows);
    g.translate(0, -top);
    Java2dPainter painter = new Java2dPainter(g);
    here.forEach(mark -> mark.paintOn(painter));
    g.dispose();
    swap(bgr, rgb, rows);
  }

  private void swap(byte[] from, byte[] to, int rows) {
    for (int i = 0; i < 3 * widthPx * rows; i += 3) {
      to[i] = from[i + 2];
      to[i + 1] = from[i + 1];
      to[i + 2] = from[i];
    }
  }
}
