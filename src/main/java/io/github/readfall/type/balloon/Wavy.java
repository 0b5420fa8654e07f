package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import java.util.ArrayList;
import java.util.List;

/** A wave that never comes inside the inner area. Proportions are house defaults, no source. */
record Wavy() implements Contour {

  /** In capitals. */
  private static final double WAVE = 1.76;

  private static final double HIGH = 0.24;
  private static final int LEAST = 8;
  private static final int POINTS_PER_WAVE = 8;
  private static final double CLEAR_PX = 0.5; // what a curve through points may cut

  @Override
  public Path around(double a, double b, OutlineStyle style) {
    Superellipse round = new Superellipse(a, b, style.squareness());
    ArcLength way = new ArcLength(round);
    int waves = Contour.evenCount(way.lengthPx() / (WAVE * style.capitalPx()), LEAST);
    double half = HIGH * style.capitalPx() / 2;
    int points = waves * POINTS_PER_WAVE;
    List<XY> through = new ArrayList<>();
    for (int i = 0; i < points; i++) {
      double wave = StrictMath.cos(2 * Math.PI * i / POINTS_PER_WAVE);
      through.add(round.outside(way.angle((double) i / points), CLEAR_PX + half * (1 + wave)));
    }
    return smooth(through);
  }

  /** A closed Catmull-Rom curve through points. */
  private static Path smooth(List<XY> through) {
    int n = through.size();
    List<Path.Step> steps = new ArrayList<>();
    steps.add(new Path.Move(through.get(0)));
    for (int i = 0; i < n; i++) {
      XY before = through.get((i + n - 1) % n);
      XY from = through.get(i);
      XY to = through.get((i + 1) % n);
      XY after = through.get((i + 2) % n);
      steps.add(
          new Path.Curve(
              from.plus((to.x() - before.x()) / 6, (to.y() - before.y()) / 6),
              to.plus((from.x() - after.x()) / 6, (from.y() - after.y()) / 6),
              to));
    }
    steps.add(new Path.Close());
    return new Path(steps);
  }

  @Override
  public double reachCapitals() {
    return HIGH + 0.1;
  }
}
