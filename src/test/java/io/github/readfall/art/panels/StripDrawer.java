package io.github.readfall.art.panels;

import io.github.readfall.Pixels;
import io.github.readfall.base.geom.Box;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.LinearGradientPaint;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** Draws strips whose panels are known. The same seed gives the same strip. */
final class StripDrawer {

  private final SplittableRandom random;
  private final DrawnKind kind;
  private final int width;
  private final List<Box> panels = new ArrayList<>();
  private final List<Shape> shapes = new ArrayList<>();
  private final boolean balloons;

  private StripDrawer(DrawnKind kind, int width, long seed) {
    this.random = new SplittableRandom(64 * seed + List.of(DrawnKind.values()).indexOf(kind));
    this.kind = kind;
    this.width = width;
    this.balloons = isKind(DrawnKind.BALLOONS);
  }

  static DrawnStrip draw(DrawnKind kind, int width, long seed) {
    return new StripDrawer(kind, width, seed).draw();
  }

  /** Mixed strips have any of the traits. */
  private boolean isKind(DrawnKind wanted) {
    return kind == wanted || (kind == DrawnKind.MIXED && random.nextInt(3) == 0);
  }

  private int px(double least, double most) {
    return (int) ((least + random.nextDouble() * (most - least)) * width / 800);
  }

  private DrawnStrip draw() {
    boolean bleed = isKind(DrawnKind.FULL_BLEED);
    boolean rows = isKind(DrawnKind.ROWS);
    boolean slanted = isKind(DrawnKind.SLANTED);
    boolean narrow = isKind(DrawnKind.NARROW_GUTTERS);
    List<Box> between = new ArrayList<>();
    int y = px(20, 120);
    int count = 4 + random.nextInt(4);
    for (int i = 0; i < count; i++) {
      int height = px(150, 620);
      row(y, height, bleed, rows, slanted);
      int gutter = narrow ? px(20, 26) : px(20, 160);
      between.add(new Box(0, (double) y + height, width, gutter));
      y += height + gutter;
    }
    BufferedImage image = new BufferedImage(width, y + px(0, 60), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    int paper = paper(g, image);
    PictureDrawer drawer = new PictureDrawer(g, random, paper);
    boolean borderless = isKind(DrawnKind.BORDERLESS);
    boolean white = isKind(DrawnKind.WHITE_AREAS) && !borderless && !bleed;
    boolean wobbly = isKind(DrawnKind.WOBBLY);
    for (int i = 0; i < shapes.size(); i++) {
      Shape shape = wobbly ? wobbled(shapes.get(i)) : shapes.get(i);
      drawer.picture(shape, white);
      boolean black = kind == DrawnKind.BLACK_GUTTERS;
      if (!borderless && !black) {
        g.setColor(new Color(20, 20, 20));
        g.setStroke(new BasicStroke(Math.max(1.5f, px(2, 5))));
        g.draw(shape);
      }
    }
    if (isKind(DrawnKind.INSETS)) {
      insets(g, drawer, paper);
    }
    if (balloons) {
      between.subList(0, between.size() - 1).forEach(gutter -> balloon(drawer, gutter));
    }
    g.dispose();
    return new DrawnStrip(spoiled(image), panels);
  }

  private void row(int y, int height, boolean bleed, boolean rows, boolean slanted) {
    int columns = rows ? 1 + random.nextInt(3) : 1;
    int margin = bleed ? 0 : px(16, 70);
    int left = margin;
    int right = width - (bleed ? 0 : random.nextInt(4) == 0 ? px(16, 200) : margin);
    int gutter = px(20, 50);
    double share = (right - left - gutter * (columns - 1.0)) / columns;
    for (int i = 0; i < columns; i++) {
      double x = Math.rint(left + i * (share + gutter));
      int shorter = columns > 1 && random.nextInt(3) == 0 ? px(0, 60) : 0;
      Box box = new Box(x, y, Math.rint(share), height - shorter);
      panels.add(box);
      shapes.add(slanted ? slanted(box) : shape(box, 0, 0));
    }
  }

  /** Slanted within its box: one end of the top or the bottom lies lower or higher. */
  private Shape slanted(Box box) {
    double most = Math.min(box.height() / 3, box.width() / 8);
    double top = (random.nextDouble() - 0.5) * 2 * most;
    double bottom = (random.nextDouble() - 0.5) * 2 * most;
    return shape(box, top, bottom);
  }

  private static Shape shape(Box box, double top, double bottom) {
    Path2D path = new Path2D.Double();
    path.moveTo(box.x(), box.y() + Math.max(0, top));
    path.lineTo(box.right(), box.y() + Math.max(0, -top));
    path.lineTo(box.right(), box.bottom() - Math.max(0, bottom));
    path.lineTo(box.x(), box.bottom() - Math.max(0, -bottom));
    path.closePath();
    return path;
  }

  /** The same outline as a hand draws it: it wobbles by two pixels and bends. */
  private Shape wobbled(Shape shape) {
    Path2D path = new Path2D.Double();
    double[] at = new double[6];
    List<double[]> corners = new ArrayList<>();
    for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
      if (i.currentSegment(at) != PathIterator.SEG_CLOSE) {
        corners.add(new double[] {at[0], at[1]});
      }
    }
    for (int i = 0; i < corners.size(); i++) {
      double[] from = corners.get(i);
      double[] to = corners.get((i + 1) % corners.size());
      int steps = 1 + (int) (StrictMath.hypot(to[0] - from[0], to[1] - from[1]) / 25);
      for (int step = 0; step < steps; step++) {
        double t = (double) step / steps;
        double x = from[0] + t * (to[0] - from[0]) + wobble();
        double y = from[1] + t * (to[1] - from[1]) + wobble();
        if (i == 0 && step == 0) {
          path.moveTo(x, y);
        } else {
          path.lineTo(x, y);
        }
      }
    }
    path.closePath();
    return path;
  }

  private double wobble() {
    return (random.nextDouble() - 0.5) * 2 * 2.2 * width / 800;
  }

  private int paper(Graphics2D g, BufferedImage image) {
    int colour = 0xffffff;
    if (kind == DrawnKind.BLACK_GUTTERS) {
      colour = random.nextBoolean() ? 0x000000 : 0x101018;
    } else if (isKind(DrawnKind.TINTED)) {
      colour = tint();
    }
    g.setColor(new Color(colour));
    if (isKind(DrawnKind.GRADIENT)) {
      Color[] stops = {new Color(tint()), new Color(tint()), new Color(tint())};
      g.setPaint(
          new LinearGradientPaint(
              0, 0, random.nextInt(width), image.getHeight(), new float[] {0, 0.4f, 1}, stops));
      colour = -1;
    }
    g.fillRect(0, 0, width, image.getHeight());
    return colour;
  }

  private int tint() {
    int red = 255 - random.nextInt(70);
    int green = 255 - random.nextInt(70);
    int blue = 255 - random.nextInt(90);
    return (red << 16) | (green << 8) | blue;
  }

  private void insets(Graphics2D g, PictureDrawer drawer, int paper) {
    for (Box panel : List.copyOf(panels)) {
      if (panel.width() < 0.5 * width || panel.height() < 0.35 * width || random.nextInt(3) == 0) {
        continue;
      }
      int ring = px(8, 16);
      int w = px(140, 240);
      int h = px(90, 150);
      boolean atLeft = random.nextBoolean();
      double x = Math.rint(atLeft ? panel.x() + 40 : panel.right() - w - 40);
      Box box = new Box(x, Math.rint(panel.bottom() - h - px(30, 50)), w, h);
      g.setColor(paper < 0 ? Color.WHITE : new Color(paper));
      g.fill(shape(box.grownBy(ring), 0, 0));
      drawer.picture(shape(box, 0, 0), false);
      g.setColor(new Color(20, 20, 20));
      g.setStroke(new BasicStroke(3));
      g.draw(shape(box, 0, 0));
      panels.add(box);
    }
  }

  private void balloon(PictureDrawer drawer, Box gutter) {
    int w = px(150, 380);
    int h = px(90, 200);
    double x = px(40, 700 - 40) * (width - w) / (700.0 * width / 800);
    double y = gutter.centre().y() - h / 2.0 + px(-50, 50);
    drawer.balloon(new Box(Math.min(x, width - w - 10.0), y, w, h));
  }

  private BufferedImage spoiled(BufferedImage image) {
    if (isKind(DrawnKind.NOISE)) {
      grain(image, 2 + random.nextInt(6));
    }
    return isKind(DrawnKind.JPEG) ? jpeg(image, (60 + random.nextInt(31)) / 100f) : image;
  }

  private void grain(BufferedImage image, double sigma) {
    int[] pixels = Pixels.of(image);
    for (int i = 0; i < pixels.length; i++) {
      double more =
          sigma * (random.nextDouble() + random.nextDouble() + random.nextDouble() - 1.5) * 2;
      int red = level((pixels[i] >> 16 & 255) + more);
      int green = level((pixels[i] >> 8 & 255) + more);
      int blue = level((pixels[i] & 255) + more);
      pixels[i] = red << 16 | green << 8 | blue;
    }
    image.getRaster().setDataElements(0, 0, width, image.getHeight(), pixels);
  }

  private static int level(double value) {
    return (int) Math.max(0, Math.min(255, Math.rint(value)));
  }

  private static BufferedImage jpeg(BufferedImage image, float quality) {
    try {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
      ImageWriteParam how = writer.getDefaultWriteParam();
      how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      how.setCompressionQuality(quality);
      try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
        writer.setOutput(out);
        writer.write(null, new IIOImage(image, null, null), how);
      }
      writer.dispose();
      return ImageIO.read(new ByteArrayInputStream(bytes.toByteArray()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
