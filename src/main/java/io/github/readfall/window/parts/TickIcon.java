package io.github.readfall.window.parts;

import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import javax.swing.Icon;
import javax.swing.UIManager;

/**
 * That something is as it should be, told by a tick; or by a dash that there is nothing to tell.
 *
 * @param isGood whether it is a tick
 * @param sizePx of the icon's square, in the window's pixels
 */
public record TickIcon(boolean isGood, int sizePx) implements Icon {

  @Override
  public void paintIcon(Component component, Graphics graphics, int x, int y) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.translate(x, y);
    g.setStroke(new BasicStroke(sizePx / 6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    g.setColor(UIManager.getColor(isGood ? "Readfall.fits" : "Readfall.quiet"));
    g.draw(isGood ? line(0.1, 0.55, 0.4, 0.85, 0.9, 0.2) : line(0.2, 0.5, 0.8, 0.5));
    g.dispose();
  }

  /** Corners as parts of the icon's side, x and y in turn. */
  private Path2D line(double... corners) {
    Path2D path = new Path2D.Double();
    path.moveTo(corners[0] * sizePx, corners[1] * sizePx);
    for (int i = 2; i < corners.length; i += 2) {
      path.lineTo(corners[i] * sizePx, corners[i + 1] * sizePx);
    }
    return path;
  }

  @Override
  public int getIconWidth() {
    return sizePx;
  }

  @Override
  public int getIconHeight() {
    return sizePx;
  }
}
