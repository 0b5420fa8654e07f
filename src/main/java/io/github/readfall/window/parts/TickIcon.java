package io.github.readfall.window.parts;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import javax.swing.UIManager;

/**
 * A tick if something is as it should be, else a dash: there is nothing to judge.
 *
 * @param isGood draws the tick
 * @param sizePx of the icon's square, in the window's pixels
 */
public record TickIcon(boolean isGood, int sizePx) implements SquareIcon {

  @Override
  public void draw(Graphics2D g) {
    g.setStroke(new BasicStroke(sizePx / 6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    g.setColor(UIManager.getColor(isGood ? "Readfall.fits" : "Readfall.quiet"));
    g.draw(isGood ? line(0.1, 0.55, 0.4, 0.85, 0.9, 0.2) : line(0.2, 0.5, 0.8, 0.5));
  }
}
