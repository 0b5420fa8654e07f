package io.github.readfall.window.canvas;

import static io.github.readfall.window.canvas.OverviewPen.FINE;
import static io.github.readfall.window.canvas.OverviewPen.THICK;

import io.github.readfall.plan.PartSpan;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.util.List;

/** Paints where parts meet, as whole lines right across, and their numbers. */
record OverviewParts(OverviewPen ink, OverviewFrame frame, List<PartSpan> parts) {

  /** Paints all of them. */
  void paint() {
    for (PartSpan part : parts) {
      double y = frame.y(part.topPx());
      if (part.number() > 1) {
        double left = frame.strip().x() - 2 * ink.tickPx();
        ink.across(left, right(), y, OverviewPen.whole(THICK));
      }
      number(Integer.toString(part.number()), y + ink.tickPx() / 2);
    }
  }

  private double right() {
    return frame.widthPx();
  }

  private void number(String number, double top) {
    double size = ink.linePx();
    Ellipse2D ring = new Ellipse2D.Double(right() - size, top, size, size);
    Graphics2D g = ink.g();
    g.setColor(ink.look().surroundings());
    g.fill(ring);
    g.setColor(ink.look().text());
    g.setStroke(OverviewPen.whole(FINE));
    g.draw(ring);
    ink.write(number, ring.getCenterX() - ink.widthPx(number) / 2, ring.getCenterY());
  }
}
