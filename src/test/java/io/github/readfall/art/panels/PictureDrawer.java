package io.github.readfall.art.panels;

import io.github.readfall.base.geom.Box;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.SplittableRandom;

/** Fills panels with something like a picture, and draws balloons. */
final class PictureDrawer {

  private static final int LEAST_CONTRAST = 45;

  private final Graphics2D g;
  private final SplittableRandom random;
  private final int paper; // its colour, or less than 0 where it has many

  PictureDrawer(Graphics2D g, SplittableRandom random, int paper) {
    this.g = g;
    this.random = random;
    this.paper = paper;
  }

  /** A picture within an outline. */
  void picture(Shape outline, boolean white) {
    Rectangle box = outline.getBounds();
    Shape clip = g.getClip();
    g.clip(outline);
    ground(box, white);
    if (!white) {
      flatParts(box);
    }
    int things = (white ? 2 : 6) + random.nextInt(10);
    for (int i = 0; i < things; i++) {
      thing(box);
    }
    hatching(box);
    g.setClip(clip);
  }

  /** A colour that nobody takes for the paper. */
  private Color colour() {
    while (true) {
      int colour = random.nextInt(0x1000000);
      int from = paper < 0 ? 0xdcdcdc : paper;
      if (Colours.distance(colour, from) > LEAST_CONTRAST) {
        return new Color(colour);
      }
    }
  }

  private void ground(Rectangle box, boolean white) {
    if (white) {
      g.setColor(Color.WHITE);
    } else if (random.nextBoolean()) {
      g.setColor(colour());
    } else {
      g.setPaint(new GradientPaint(box.x, box.y, colour(), box.x, (float) box.getMaxY(), colour()));
    }
    g.fill(box);
  }

  /** A sky, a floor. */
  private void flatParts(Rectangle box) {
    if (random.nextBoolean()) {
      g.setColor(colour());
      int height = box.height / (3 + random.nextInt(3));
      g.fillRect(box.x, box.y + box.height - height, box.width, height);
    }
  }

  private void thing(Rectangle box) {
    g.setColor(random.nextInt(5) == 0 ? Color.WHITE : colour());
    double w = box.width * (0.05 + 0.4 * random.nextDouble());
    double h = box.height * (0.05 + 0.4 * random.nextDouble());
    double x = box.x + box.width * random.nextDouble() - w / 2;
    double y = box.y + box.height * random.nextDouble() - h / 2;
    Shape thing = random.nextBoolean() ? new Ellipse2D.Double(x, y, w, h) : blob(x, y, w, h);
    g.fill(thing);
    g.setColor(new Color(30, 25, 25));
    g.setStroke(new BasicStroke(1 + random.nextInt(3)));
    g.draw(thing);
  }

  private Shape blob(double x, double y, double w, double h) {
    Path2D path = new Path2D.Double();
    path.moveTo(x + w * random.nextDouble(), y + h * random.nextDouble());
    for (int i = 0; i < 5; i++) {
      path.lineTo(x + w * random.nextDouble(), y + h * random.nextDouble());
    }
    path.closePath();
    return path;
  }

  private void hatching(Rectangle box) {
    g.setColor(new Color(30, 30, 40));
    g.setStroke(new BasicStroke(1));
    double x = box.x + box.width * random.nextDouble();
    double y = box.y + box.height * random.nextDouble();
    for (int i = 0; i < 30; i++) {
      g.drawLine((int) x + 4 * i, (int) y, (int) x + 4 * i + 30, (int) y + 40);
    }
  }

  /** A balloon with something like words in it. */
  void balloon(Box box) {
    Shape outline = new Ellipse2D.Double(box.x(), box.y(), box.width(), box.height());
    g.setColor(Color.WHITE);
    g.fill(outline);
    g.setColor(new Color(15, 15, 15));
    g.setStroke(new BasicStroke(3));
    g.draw(outline);
    for (double y = box.y() + 0.3 * box.height(); y < box.y() + 0.75 * box.height(); y += 18) {
      for (double x = box.x() + 0.2 * box.width(); x < box.x() + 0.8 * box.width(); x += 14) {
        g.drawLine((int) x, (int) y, (int) x + random.nextInt(9), (int) y + random.nextInt(10));
      }
    }
  }
}
