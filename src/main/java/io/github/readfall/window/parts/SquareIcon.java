package io.github.readfall.window.parts;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import javax.swing.Icon;

/** A square icon that is drawn with smooth edges from its upper left corner. */
public interface SquareIcon extends Icon {

  /** The side of the square, in the window's pixels. */
  int sizePx();

  /** Draws the icon; the square's upper left corner is at 0, 0. */
  void draw(Graphics2D g);

  @Override
  default void paintIcon(Component component, Graphics graphics, int x, int y) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.translate(x, y);
    draw(g);
    g.dispose();
  }

  /** A line through points given as shares of the side, x and y in turn: {@code 0, 0, 1, 1}. */
  default Path2D line(double... points) {
    Path2D path = new Path2D.Double();
    path.moveTo(points[0] * sizePx(), points[1] * sizePx());
    for (int i = 2; i < points.length; i += 2) {
      path.lineTo(points[i] * sizePx(), points[i + 1] * sizePx());
    }
    return path;
  }

  @Override
  default int getIconWidth() {
    return sizePx();
  }

  @Override
  default int getIconHeight() {
    return sizePx();
  }
}
