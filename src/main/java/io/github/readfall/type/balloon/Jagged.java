package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import java.util.ArrayList;
import java.util.List;

/**
 * A box with a sawtooth edge and cut corners, for a voice through a machine. Proportions are house
 * defaults, no source.
 */
record Jagged() implements Contour {

  /** In capitals. */
  private static final double TOOTH = 0.76;

  private static final double HIGH = 0.22;

  @Override
  public Path around(double a, double b, OutlineStyle style) {
    double high = HIGH * style.capitalPx();
    List<XY> corners = List.of(new XY(-a, -b), new XY(a, -b), new XY(a, b), new XY(-a, b));
    List<Path.Step> steps = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      side(corners.get(i), corners.get((i + 1) % corners.size()), high, style.capitalPx(), steps);
    }
    steps.add(new Path.Close());
    return new Path(steps);
  }

  /** Teeth along one side, each steep on its leading edge. */
  private static void side(XY from, XY to, double high, double capitalPx, List<Path.Step> steps) {
    double length = from.distanceTo(to);
    int teeth = Math.max(2, (int) Math.round(length / (TOOTH * capitalPx)));
    double nx = (to.y() - from.y()) / length;
    double ny = -(to.x() - from.x()) / length;
    for (int i = 0; i < teeth; i++) {
      XY foot = from.towards(to, (double) i / teeth);
      XY tip = from.towards(to, (i + 0.3) / teeth).plus(nx * high, ny * high);
      steps.add(steps.isEmpty() ? new Path.Move(foot) : new Path.Line(foot));
      steps.add(new Path.Line(tip));
    }
  }

  @Override
  public double reachCapitals() {
    return HIGH;
  }
}
