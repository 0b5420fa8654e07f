package io.github.readfall.cli.report;

import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Scanner;

/**
 * A report's outline read back (SVG 1.1, section 8.3, "Path data": absolute M, L, C and Z).
 *
 * @param shape the outline
 * @param sides it flattened into straight pieces, none of them more than a hundredth off
 */
record SvgOutline(Path2D shape, List<Line2D> sides) {

  private static final double FLATNESS_PX = 0.01;

  static SvgOutline parse(String data) {
    Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
    try (Scanner words = new Scanner(data)) {
      while (words.hasNext()) {
        step(words, path);
      }
    }
    return new SvgOutline(path, flat(path));
  }

  private static void step(Scanner words, Path2D path) {
    String kind = words.next();
    switch (kind) {
      case "M" -> path.moveTo(number(words), number(words));
      case "L" -> path.lineTo(number(words), number(words));
      case "C" ->
          path.curveTo(
              number(words),
              number(words),
              number(words),
              number(words),
              number(words),
              number(words));
      case "Z" -> path.closePath();
      default -> throw new AssertionError("no step of an outline: " + kind);
    }
  }

  private static double number(Scanner words) {
    return Double.parseDouble(words.next());
  }

  private static List<Line2D> flat(Path2D path) {
    List<Line2D> sides = new ArrayList<>();
    double[] c = new double[6];
    double[] start = new double[2];
    double[] pen = new double[2];
    PathIterator steps = new FlatteningPathIterator(path.getPathIterator(null), FLATNESS_PX, 16);
    for (; !steps.isDone(); steps.next()) {
      int kind = steps.currentSegment(c);
      double[] to = kind == PathIterator.SEG_CLOSE ? start : c;
      if (kind == PathIterator.SEG_MOVETO) {
        start = new double[] {c[0], c[1]};
      } else {
        sides.add(new Line2D.Double(pen[0], pen[1], to[0], to[1]));
      }
      pen = new double[] {to[0], to[1]};
    }
    return sides;
  }

  /** The bounds of the drawn curve, control points left out. */
  Rectangle2D bounds() {
    Rectangle2D bounds = sides.get(0).getBounds2D();
    sides.forEach(side -> bounds.add(side.getBounds2D()));
    return bounds;
  }

  /** How near a point comes to the outline; below 0 where it lies outside. */
  double depth(double x, double y) {
    double least = sides.stream().mapToDouble(side -> side.ptSegDistSq(x, y)).min().orElseThrow();
    return shape.contains(x, y) ? Math.sqrt(least) : -Math.sqrt(least);
  }

  /** How near a box comes to the outline; below 0 where it leaves it. */
  double depth(Rectangle2D box) {
    double least = Double.POSITIVE_INFINITY;
    for (double x : new double[] {box.getMinX(), box.getMaxX()}) {
      for (double y : new double[] {box.getMinY(), box.getMaxY()}) {
        least = Math.min(least, depth(x, y));
      }
    }
    for (Line2D side : sides) {
      least = box.intersectsLine(side) ? Math.min(least, -1) : least;
      least = Math.min(least, distance(box, side.getX1(), side.getY1()));
    }
    return least;
  }

  private static double distance(Rectangle2D box, double x, double y) {
    double dx = Math.max(0, Math.max(box.getMinX() - x, x - box.getMaxX()));
    double dy = Math.max(0, Math.max(box.getMinY() - y, y - box.getMaxY()));
    return Math.sqrt(dx * dx + dy * dy);
  }
}
