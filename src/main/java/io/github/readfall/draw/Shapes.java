package io.github.readfall.draw;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import java.util.ArrayList;
import java.util.List;

/** Plain outlines for everything round the lettering. */
public final class Shapes {

  /** Control points this far along the tangent make a quarter of a circle, to 0.03 %. */
  private static final double QUARTER = 0.5522847498;

  private Shapes() {}

  /** The four sides of a box. */
  public static Path box(Box box) {
    return new Path(
        List.of(
            new Path.Move(new XY(box.x(), box.y())),
            new Path.Line(new XY(box.right(), box.y())),
            new Path.Line(new XY(box.right(), box.bottom())),
            new Path.Line(new XY(box.x(), box.bottom())),
            new Path.Close()));
  }

  /** A box with round corners. */
  public static Path rounded(Box box, double radiusPx) {
    double r = Math.min(radiusPx, Math.min(box.width(), box.height()) / 2);
    double k = r * (1 - QUARTER);
    double left = box.x();
    double top = box.y();
    double right = box.right();
    double bottom = box.bottom();
    return new Path(
        List.of(
            new Path.Move(new XY(left + r, top)),
            new Path.Line(new XY(right - r, top)),
            new Path.Curve(new XY(right - k, top), new XY(right, top + k), new XY(right, top + r)),
            new Path.Line(new XY(right, bottom - r)),
            new Path.Curve(
                new XY(right, bottom - k), new XY(right - k, bottom), new XY(right - r, bottom)),
            new Path.Line(new XY(left + r, bottom)),
            new Path.Curve(
                new XY(left + k, bottom), new XY(left, bottom - k), new XY(left, bottom - r)),
            new Path.Line(new XY(left, top + r)),
            new Path.Curve(new XY(left, top + k), new XY(left + k, top), new XY(left + r, top)),
            new Path.Close()));
  }

  /** A straight line. */
  public static Path line(XY from, XY to) {
    return new Path(List.of(new Path.Move(from), new Path.Line(to)));
  }

  /** A circle round a point. */
  public static Path disc(XY middle, double radiusPx) {
    double k = radiusPx * QUARTER;
    XY east = middle.plus(radiusPx, 0);
    XY south = middle.plus(0, radiusPx);
    XY west = middle.plus(-radiusPx, 0);
    XY north = middle.plus(0, -radiusPx);
    return new Path(
        List.of(
            new Path.Move(east),
            new Path.Curve(east.plus(0, k), south.plus(k, 0), south),
            new Path.Curve(south.plus(-k, 0), west.plus(0, k), west),
            new Path.Curve(west.plus(0, -k), north.plus(-k, 0), north),
            new Path.Curve(north.plus(k, 0), east.plus(0, -k), east),
            new Path.Close()));
  }

  /** A line through points that leaves and reaches each vertically, as an eye falls. */
  static Path fall(List<XY> points) {
    List<Path.Step> steps = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      XY to = points.get(i);
      if (i == 0) {
        steps.add(new Path.Move(to));
      } else {
        XY from = points.get(i - 1);
        double bow = (to.y() - from.y()) / 2;
        steps.add(new Path.Curve(from.plus(0, bow), to.plus(0, -bow), to));
      }
    }
    return new Path(steps);
  }
}
