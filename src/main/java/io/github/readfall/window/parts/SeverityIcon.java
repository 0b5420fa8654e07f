package io.github.readfall.window.parts;

import io.github.readfall.base.finding.Severity;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import javax.swing.Icon;
import javax.swing.UIManager;

/**
 * How grave a finding is, told by form as well as colour: a full lozenge, a full triangle, a ring.
 *
 * @param severity to be told
 * @param sizePx of the icon's square, in the window's pixels
 */
public record SeverityIcon(Severity severity, int sizePx) implements Icon {

  @Override
  public void paintIcon(Component component, Graphics graphics, int x, int y) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.translate(x, y);
    g.setColor(UIManager.getColor("Readfall." + severity.word()));
    switch (severity) {
      case ERROR -> g.fill(polygon(0.5, 0, 1, 0.5, 0.5, 1, 0, 0.5));
      case WARNING -> g.fill(polygon(0.5, 0.06, 1, 0.94, 0, 0.94));
      case NOTE -> {
        g.setStroke(new BasicStroke(sizePx / 6f));
        g.draw(new Ellipse2D.Double(sizePx * 0.15, sizePx * 0.15, sizePx * 0.7, sizePx * 0.7));
      }
    }
    g.dispose();
  }

  /** Corners as parts of the icon's side, x and y in turn. */
  private Shape polygon(double... corners) {
    Path2D path = new Path2D.Double();
    path.moveTo(corners[0] * sizePx, corners[1] * sizePx);
    for (int i = 2; i < corners.length; i += 2) {
      path.lineTo(corners[i] * sizePx, corners[i + 1] * sizePx);
    }
    path.closePath();
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
