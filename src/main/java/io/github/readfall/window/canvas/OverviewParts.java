package io.github.readfall.window.canvas;

import static io.github.readfall.window.canvas.OverviewPen.FINE;
import static io.github.readfall.window.canvas.OverviewPen.THICK;

import io.github.readfall.plan.PartSpan;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.util.List;

/** Paints the joints of parts, as whole lines right across, and the numbers of the parts. */
record OverviewParts(OverviewPen pen, OverviewFrame frame, List<PartSpan> parts) {

  /** Paints all parts. */
  void paint() {
    for (PartSpan part : parts) {
      double y = frame.y(part.topPx());
      if (part.number() > 1) {
        double left = frame.strip().x() - 2 * pen.tickPx();
        pen.across(left, right(), y, OverviewPen.whole(THICK));
      }
      number(Integer.toString(part.number()), y + pen.tickPx() / 2);
    }
  }

  private double right() {
    return frame.widthPx();
  }

  private void number(String number, double top) {
    double size = pen.linePx();
    Ellipse2D ring = new Ellipse2D.Double(right() - size, top, size, size);
    Graphics2D g = pen.g();
    g.setColor(pen.colours().surroundings());
    g.fill(ring);
    g.setColor(pen.colours().text());
    g.setStroke(OverviewPen.whole(FINE));
    g.draw(ring);
    pen.write(number, ring.getCenterX() - pen.widthPx(number) / 2, ring.getCenterY());
  }
}
