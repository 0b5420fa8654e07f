package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import java.util.ArrayList;
import java.util.List;

/**
 * The neck between two joined balloons: a waisted band from inside the one to inside the other.
 *
 * @param from inside the first outline
 * @param to inside the second
 * @param widthPx of its ends; positive
 */
public record Bridge(XY from, XY to, double widthPx) {

  private static final double WAIST = 0.78; // house default, no source

  /** The band's outline, to be joined with both balloons'. */
  public Path outline() {
    double length = Math.max(1, from.distanceTo(to));
    double sideX = (to.y() - from.y()) / length * widthPx / 2;
    double sideY = -(to.x() - from.x()) / length * widthPx / 2;
    XY middle = from.towards(to, 0.5);
    List<Path.Step> steps = new ArrayList<>();
    steps.add(new Path.Move(from.plus(sideX, sideY)));
    XY left = middle.plus(sideX * WAIST, sideY * WAIST);
    steps.add(new Path.Curve(left, left, to.plus(sideX, sideY)));
    steps.add(new Path.Line(to.plus(-sideX, -sideY)));
    XY right = middle.plus(-sideX * WAIST, -sideY * WAIST);
    steps.add(new Path.Curve(right, right, from.plus(-sideX, -sideY)));
    steps.add(new Path.Close());
    return new Path(steps);
  }
}
