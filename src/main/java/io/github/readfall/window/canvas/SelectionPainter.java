package io.github.readfall.window.canvas;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.function.UnaryOperator;

/**
 * Draws the marks of the selection. A light line under every line makes it visible on any art.
 *
 * @param toView converts a box of the strip to one of the surface
 * @param mark the colour of the lines
 * @param ground the colour under them
 */
record SelectionPainter(UnaryOperator<Box> toView, Color mark, Color ground) {

  /** Half sides and strokes in user-interface pixels. House defaults, no source. */
  private static final double GRIP = 4;

  private static final double BAR = 12;
  private static final double POINT = 5;
  private static final float FINE = 1.5f;
  private static final float UNDER = 4;
  private static final float DASH = 5;

  void draw(Graphics2D outer, SelectionMarks held) {
    Graphics2D g = (Graphics2D) outer.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    held.frames().forEach(box -> line(g, rectangle(toView.apply(box)), new BasicStroke(FINE)));
    held.band().ifPresent(box -> line(g, rectangle(toView.apply(box)), dashed()));
    held.points().forEach(at -> filled(g, round(toView(at), POINT)));
    held.bars().forEach(at -> filled(g, bar(toView(at))));
    held.grips().forEach(at -> filled(g, square(toView(at))));
    g.dispose();
  }

  private static BasicStroke dashed() {
    return new BasicStroke(
        FINE, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1, new float[] {DASH, DASH}, 0);
  }

  private XY toView(XY at) {
    Box box = toView.apply(new Box(at.x(), at.y(), 0, 0));
    return new XY(box.x(), box.y());
  }

  private void line(Graphics2D g, Shape shape, BasicStroke stroke) {
    g.setColor(ground);
    g.setStroke(new BasicStroke(UNDER));
    g.draw(shape);
    g.setColor(mark);
    g.setStroke(stroke);
    g.draw(shape);
  }

  private void filled(Graphics2D g, Shape shape) {
    g.setStroke(new BasicStroke(UNDER));
    g.setColor(ground);
    g.draw(shape);
    g.fill(shape);
    g.setColor(mark);
    g.setStroke(new BasicStroke(FINE));
    g.draw(shape);
  }

  private static Shape rectangle(Box box) {
    return new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height());
  }

  private static Shape square(XY at) {
    return new Rectangle2D.Double(at.x() - GRIP, at.y() - GRIP, 2 * GRIP, 2 * GRIP);
  }

  private static Shape round(XY at, double radius) {
    return new Ellipse2D.Double(at.x() - radius, at.y() - radius, 2 * radius, 2 * radius);
  }

  private static Shape bar(XY at) {
    return new RoundRectangle2D.Double(
        at.x() - BAR, at.y() - GRIP, 2 * BAR, 2 * GRIP, 2 * GRIP, 2 * GRIP);
  }
}
