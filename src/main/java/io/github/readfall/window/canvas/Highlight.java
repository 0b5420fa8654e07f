package io.github.readfall.window.canvas;

import io.github.readfall.base.geom.Box;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;

/** Draws a soft frame around what the caret or a finding refers to. */
final class Highlight {

  private static final int HALO = 12;
  private static final int CORNER = 10;
  private static final int FAINT = 60;
  private static final float FINE = 2;

  private Highlight() {}

  /** The area that a frame covers, in user-interface pixels. */
  static Rectangle reach(Box box) {
    int x = (int) Math.floor(box.x()) - HALO;
    int y = (int) Math.floor(box.y()) - HALO;
    int right = (int) Math.ceil(box.right()) + HALO;
    int bottom = (int) Math.ceil(box.bottom()) + HALO;
    return new Rectangle(x, y, right - x, bottom - y);
  }

  /** Draws a frame around a box of the surface. */
  static void draw(Graphics2D outer, Box box, Color colour) {
    Graphics2D g = (Graphics2D) outer.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    Box round = box.grownBy(HALO / 2.0);
    RoundRectangle2D shape =
        new RoundRectangle2D.Double(
            round.x(), round.y(), round.width(), round.height(), CORNER, CORNER);
    g.setColor(new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), FAINT));
    g.setStroke(new BasicStroke(HALO / 2f));
    g.draw(shape);
    g.setColor(colour);
    g.setStroke(new BasicStroke(FINE));
    g.draw(shape);
    g.dispose();
  }
}
