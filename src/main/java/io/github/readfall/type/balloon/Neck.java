package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import java.util.List;

/**
 * The neck between two joined balloons: a waisted band from inside the one to inside the other.
 *
 * @param from inside the first outline
 * @param to inside the second
 * @param widthPx of its ends; positive
 */
public record Neck(XY from, XY to, double widthPx) {

  private static final double WAIST = 0.72; // house default, no source

  /** Width at the ends, in capitals. House default, no source. */
  private static final double WIDTH = 1.3;

  /** Greatest width over the lesser side of the lesser balloon. House default, no source. */
  private static final double MOST_WIDTH = 0.5;

  /** Length inside each balloon, in widths: as much as a curved edge needs. */
  private static final double SUNK = 0.75;

  private static final int EDGE_POINTS = 96;

  /** How much farther points may be and still count as nearest, in capitals. */
  private static final double NEARLY = 0.12;

  /** The neck where two balloons are nearest: in the middle if their sides face each other. */
  public static Neck between(InnerArea one, InnerArea other) {
    double capitalPx = Math.min(one.style().capitalPx(), other.style().capitalPx());
    double widthPx = Math.min(WIDTH * capitalPx, MOST_WIDTH * Math.min(side(one), side(other)));
    List<XY> ones = one.edge(EDGE_POINTS);
    List<XY> others = other.edge(EDGE_POINTS);
    XY from = nearest(ones, others, NEARLY * capitalPx);
    XY to = nearest(others, ones, NEARLY * capitalPx);
    boolean meet = one.holds(to) || other.holds(from) || from.distanceTo(to) < NEARLY * capitalPx;
    XY way = meet ? way(one.middle(), other.middle()) : way(from, to);
    double sunk = SUNK * widthPx;
    return new Neck(
        from.plus(-way.x() * sunk, -way.y() * sunk),
        to.plus(way.x() * sunk, way.y() * sunk),
        widthPx);
  }

  private static double side(InnerArea area) {
    return Math.min(area.box().width(), area.box().height());
  }

  /** The middle of those points that are nearly as near to others as any. */
  private static XY nearest(List<XY> points, List<XY> others, double nearlyPx) {
    double[] apart = points.stream().mapToDouble(point -> distance(point, others)).toArray();
    double least = Double.POSITIVE_INFINITY;
    for (double distance : apart) {
      least = Math.min(least, distance);
    }
    double weights = 0;
    XY sum = new XY(0, 0);
    for (int i = 0; i < apart.length; i++) {
      double weight = StrictMath.exp((least - apart[i]) / nearlyPx);
      weights += weight;
      sum = sum.plus(points.get(i).x() * weight, points.get(i).y() * weight);
    }
    return new XY(sum.x() / weights, sum.y() / weights);
  }

  private static double distance(XY point, List<XY> others) {
    double least = Double.POSITIVE_INFINITY;
    for (XY other : others) {
      double dx = point.x() - other.x();
      double dy = point.y() - other.y();
      least = Math.min(least, dx * dx + dy * dy);
    }
    return Math.sqrt(least);
  }

  /** The way from one point to another, of length 1; downwards if they are the same. */
  private static XY way(XY from, XY to) {
    double length = from.distanceTo(to);
    return length == 0
        ? new XY(0, 1)
        : new XY((to.x() - from.x()) / length, (to.y() - from.y()) / length);
  }

  /** The band's outline, to be joined with both balloons'. */
  public Path outline() {
    XY way = way(from, to);
    double sideX = way.y() * widthPx / 2;
    double sideY = -way.x() * widthPx / 2;
    XY middle = from.towards(to, 0.5);
    XY left = middle.plus(sideX * WAIST, sideY * WAIST);
    XY right = middle.plus(-sideX * WAIST, -sideY * WAIST);
    return new Path(
        List.of(
            new Path.Move(from.plus(sideX, sideY)),
            new Path.Curve(left, left, to.plus(sideX, sideY)),
            new Path.Line(to.plus(-sideX, -sideY)),
            new Path.Curve(right, right, from.plus(-sideX, -sideY)),
            new Path.Close()));
  }
}
