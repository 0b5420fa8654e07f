package io.github.readfall.base.geom;

import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;

/** An outline as points: for tests that go along it. */
public final class Flattened {

  private Flattened() {}

  /** The points of its one closed part, each curve cut into so many pieces. */
  public static List<XY> evenly(Path path, int pieces) {
    List<XY> points = new ArrayList<>();
    XY pen = new XY(0, 0);
    for (Path.Step step : path.steps()) {
      if (step instanceof Path.Curve curve) {
        for (int i = 1; i < pieces; i++) {
          points.add(at(pen, curve, (double) i / pieces));
        }
        points.add(curve.to());
        pen = curve.to();
      } else if (!(step instanceof Path.Close)) {
        pen = step instanceof Path.Line line ? line.to() : ((Path.Move) step).to();
        points.add(pen);
      }
    }
    return points;
  }

  /** De Casteljau's construction. */
  private static XY at(XY from, Path.Curve curve, double t) {
    XY a = from.towards(curve.control1(), t);
    XY b = curve.control1().towards(curve.control2(), t);
    XY c = curve.control2().towards(curve.to(), t);
    return a.towards(b, t).towards(b.towards(c, t), t);
  }

  /** The length of its one closed part, each curve cut into 200 pieces. */
  public static double length(Path path) {
    List<XY> points = evenly(path, 200);
    double length = points.get(points.size() - 1).distanceTo(points.get(0));
    for (int i = 1; i < points.size(); i++) {
      length += points.get(i - 1).distanceTo(points.get(i));
    }
    return length;
  }

  /** The area inside, by the shoelace formula over each closed part. */
  public static double area(Path path) {
    double twice = 0;
    double[] c = new double[6];
    XY start = new XY(0, 0);
    XY pen = start;
    for (PathIterator it = path.toShape().getPathIterator(null, 0.001); !it.isDone(); it.next()) {
      boolean move = it.currentSegment(c) == PathIterator.SEG_MOVETO;
      boolean close = it.currentSegment(c) == PathIterator.SEG_CLOSE;
      XY to = close ? start : new XY(c[0], c[1]);
      start = move ? to : start;
      pen = move ? to : pen;
      twice += pen.x() * to.y() - to.x() * pen.y();
      pen = to;
    }
    return Math.abs(twice) / 2;
  }
}
