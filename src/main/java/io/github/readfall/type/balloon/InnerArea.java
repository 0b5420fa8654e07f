package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import java.util.ArrayList;
import java.util.List;

/**
 * The area of a balloon that its text keeps a margin from, in its place. Necks and tails are aimed
 * by it, whatever bumps are drawn round it.
 *
 * @param shape of the balloon
 * @param box bounds of the area; neither side 0
 * @param style of the drawn outline
 */
public record InnerArea(ShapeKind shape, Box box, OutlineStyle style) {

  private static final int HALVINGS = 30;

  XY middle() {
    return box.centre();
  }

  /** Returns true if a point is inside. */
  boolean holds(XY point) {
    return holds(point.x() - middle().x(), point.y() - middle().y());
  }

  private boolean holds(double across, double along) {
    double a = box.width() / 2;
    double b = box.height() / 2;
    return shape.isRound()
        ? new Superellipse(a, b, style.squareness()).holds(new XY(across, along))
        : shape.enclosure(style.squareness()).insidePx(a, b, style.marginPx(), across, along) >= 0;
  }

  /** The distance of the edge from the middle, in the direction of a point, over the point's. */
  double edgeShare(XY towards) {
    double dx = towards.x() - middle().x();
    double dy = towards.y() - middle().y();
    double a = box.width() / 2;
    double b = box.height() / 2;
    if (shape.isRound()) {
      return new Superellipse(a, b, style.squareness()).edgeShare(dx, dy);
    }
    double in = 0;
    double out = Math.min(a / Math.max(Math.abs(dx), 1e-9), b / Math.max(Math.abs(dy), 1e-9));
    for (int i = 0; i < HALVINGS && !holds(out * dx, out * dy); i++) {
      double half = (in + out) / 2;
      boolean inside = holds(half * dx, half * dy);
      in = inside ? half : in;
      out = inside ? out : half;
    }
    return out;
  }

  /** Points all round its edge, at even angles seen from the middle of a square of its shape. */
  List<XY> edge(int count) {
    List<XY> edge = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      double angle = 2 * Math.PI * i / count;
      XY ray =
          middle()
              .plus(
                  box.width() * StrictMath.cos(angle) / 2,
                  box.height() * StrictMath.sin(angle) / 2);
      edge.add(middle().towards(ray, edgeShare(ray)));
    }
    return edge;
  }
}
