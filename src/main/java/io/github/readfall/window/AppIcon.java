package io.github.readfall.window;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.Stream;

/** The program's icon: two balloons on a strip, and the reading path between them. */
final class AppIcon {

  private static final Color STRIP = new Color(0xf4f2ed);
  private static final Color SEA = new Color(0x1d6b67);

  private AppIcon() {}

  /** The icon in the sizes that desktops ask for. */
  static List<Image> images() {
    return Stream.of(16, 24, 32, 48, 64, 128).map(AppIcon::image).toList();
  }

  /** Draws the icon on a square of 16 by 16, scaled. */
  private static Image image(int sizePx) {
    BufferedImage image = new BufferedImage(sizePx, sizePx, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.scale(sizePx / 16.0, sizePx / 16.0);
    g.setColor(SEA);
    g.fill(new RoundRectangle2D.Double(3, 0, 10, 16, 3, 3));
    Path2D path = new Path2D.Double();
    path.moveTo(6.5, 4.5);
    path.curveTo(6.5, 9, 9.5, 7, 9.5, 11.5);
    g.setColor(STRIP);
    g.setStroke(new BasicStroke(1));
    g.draw(path);
    g.fill(new Ellipse2D.Double(4.2, 2.4, 5, 4));
    g.fill(new Ellipse2D.Double(6.8, 9.6, 5, 4));
    g.dispose();
    return image;
  }
}
