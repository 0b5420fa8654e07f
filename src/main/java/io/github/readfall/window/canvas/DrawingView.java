package io.github.readfall.window.canvas;

import io.github.readfall.draw.Drawing;
import io.github.readfall.draw.render.Java2dPainter;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.Optional;

/**
 * A small drawing in the middle of the component, at a given scale or smaller if it does not fit.
 */
public final class DrawingView extends CanvasView {

  private static final long serialVersionUID = 1;

  private static final int AIR_LINES = 1;

  private transient Optional<Drawing> drawing = Optional.empty();
  private double scale = 1;

  /**
   * Shows a drawing, or none.
   *
   * @param next in pixels of its own
   * @param scaled window pixels to one of those; reduced if the drawing does not fit
   */
  public void show(Optional<Drawing> next, double scaled) {
    drawing = next;
    scale = scaled;
    getAccessibleContext().setAccessibleDescription(next.map(Drawing::title).orElse(""));
    repaint();
  }

  @Override
  public Dimension getPreferredSize() {
    int line = getFontMetrics(getFont()).getHeight();
    return new Dimension(12 * line, 9 * line);
  }

  @Override
  public Dimension getMinimumSize() {
    int line = getFontMetrics(getFont()).getHeight();
    return new Dimension(4 * line, 5 * line);
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setColor(CanvasColours.now().surroundings());
    g.fillRect(0, 0, getWidth(), getHeight());
    drawing.ifPresent(marks -> paint(marks, g));
    g.dispose();
  }

  private void paint(Drawing marks, Graphics2D g) {
    int air = AIR_LINES * g.getFontMetrics().getHeight();
    double room =
        Math.min(
            (getWidth() - air) / (double) marks.widthPx(),
            (getHeight() - air) / (double) marks.heightPx());
    double fit = Math.min(scale, Math.max(0, room));
    g.translate(
        (getWidth() - fit * marks.widthPx()) / 2, (getHeight() - fit * marks.heightPx()) / 2);
    g.scale(fit, fit);
    Java2dPainter painter = new Java2dPainter(g);
    marks.marks().forEach(mark -> mark.paintOn(painter));
  }
}
