package io.github.readfall.window.canvas;

import io.github.readfall.base.geom.Box;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** The tools that an overview is drawn with. Lengths are user-interface pixels. */
record OverviewPen(Graphics2D g, CanvasColours colours) {

  static final int FAINT = 46;
  static final int SOFT = 110;
  static final int CLEAR = 170;
  static final float FINE = 1;
  static final float THICK = 2;

  /**
   * A translucent colour.
   *
   * @param alpha 0 to 255
   */
  static Color clear(Color ink, int alpha) {
    return new Color(ink.getRed(), ink.getGreen(), ink.getBlue(), alpha);
  }

  static BasicStroke whole(float width) {
    return new BasicStroke(width);
  }

  static BasicStroke dashed(double on, double off) {
    float[] dashes = {(float) on, (float) off};
    return new BasicStroke(FINE, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1, dashes, 0);
  }

  void fill(Box box, Color ink) {
    g.setColor(ink);
    g.fill(new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height()));
  }

  void frame(Box box, Color ink, float width) {
    g.setColor(ink);
    g.setStroke(whole(width));
    g.draw(new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height()));
  }

  void across(double left, double right, double y, BasicStroke stroke) {
    g.setColor(colours.text());
    g.setStroke(stroke);
    g.draw(new Line2D.Double(left, y, right, y));
  }

  void down(double x, Box beside, Color ink, BasicStroke stroke) {
    g.setColor(ink);
    g.setStroke(stroke);
    g.draw(new Line2D.Double(x, beside.y(), x, beside.bottom()));
  }

  /** Writes words, with digits and small letters centred on a height. */
  void write(String words, double left, double middle) {
    g.setColor(colours.text());
    g.drawString(words, (float) left, (float) (middle + capsPx() / 2));
  }

  /** Draws a filled triangle, as tall as digits. */
  void triangle(double left, double middle) {
    double side = capsPx();
    Path2D path = new Path2D.Double();
    path.moveTo(left + side / 2, middle - side / 2);
    path.lineTo(left + side, middle + side / 2);
    path.lineTo(left, middle + side / 2);
    path.closePath();
    g.setColor(colours.text());
    g.fill(path);
  }

  /** The approximate height of digits. */
  double capsPx() {
    return (double) letters().getAscent() - letters().getDescent();
  }

  double widthPx(String words) {
    return letters().stringWidth(words);
  }

  double linePx() {
    return letters().getHeight();
  }

  /** The length of a short stroke. */
  double tickPx() {
    return letters().getAscent() / 2.0;
  }

  private FontMetrics letters() {
    return g.getFontMetrics();
  }
}
