package io.github.readfall.window.parts;

import io.github.readfall.base.finding.Severity;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import javax.swing.UIManager;

/**
 * The severity of a finding, shown by form as well as colour: a diamond for an error, a triangle
 * for a warning, a ring for a note.
 *
 * @param severity shown
 * @param sizePx of the icon's square, in the window's pixels
 */
public record SeverityIcon(Severity severity, int sizePx) implements SquareIcon {

  @Override
  public void draw(Graphics2D g) {
    g.setColor(UIManager.getColor("Readfall." + severity.word()));
    switch (severity) {
      case ERROR -> g.fill(line(0.5, 0, 1, 0.5, 0.5, 1, 0, 0.5));
      case WARNING -> g.fill(line(0.5, 0.06, 1, 0.94, 0, 0.94));
      case NOTE -> {
        g.setStroke(new BasicStroke(sizePx / 6f));
        g.draw(new Ellipse2D.Double(sizePx * 0.15, sizePx * 0.15, sizePx * 0.7, sizePx * 0.7));
      }
    }
  }
}
