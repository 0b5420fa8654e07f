package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import java.util.ArrayList;
import java.util.List;

/** Round bumps on the ellipse. Proportions are house defaults, no source. */
record Cloud() implements Contour {

  private static final double APART_MARGINS = 4.4;
  private static final double HIGH_MARGINS = 2.0;
  private static final double HIGHEST_OVER_WIDTH = 0.6;
  private static final double LEAN = 0.03; // keeps neighbours apart at the foot they share
  private static final int LEAST = 8;
  private static final int MOST = 60;
  private static final int SAMPLES = 16;

  /** Draws as many more bumps as needed so that none cuts the corner of a flat ellipse's ends. */
  @Override
  public Path around(double a, double b, double unitPx) {
    EllipsePoints round = EllipsePoints.spaced(a, b, APART_MARGINS * unitPx, LEAST);
    List<Path.Curve> bumps = bumps(round, unitPx);
    while (comesIn(round, bumps) && round.feet() < MOST) {
      round = new EllipsePoints(a, b, round.feet() + 2);
      bumps = bumps(round, unitPx);
    }
    List<Path.Step> steps = new ArrayList<>();
    steps.add(new Path.Move(bumps.get(bumps.size() - 1).to()));
    steps.addAll(bumps);
    steps.add(new Path.Close());
    return new Path(steps);
  }

  private static List<Path.Curve> bumps(EllipsePoints round, double unitPx) {
    List<Double> feet = round.angles();
    List<Path.Curve> bumps = new ArrayList<>();
    for (int i = 0; i < feet.size(); i++) {
      double from = feet.get(i);
      double to = feet.get((i + 1) % feet.size());
      XY foot = round.at(to);
      double most = HIGHEST_OVER_WIDTH * foot.distanceTo(round.at(from));
      double high = Math.min(most, HIGH_MARGINS * unitPx);
      high *= i % 3 == 1 ? 1.18 : 1; // alike, but not the same
      XY leaves = round.outside(from, high).towards(foot, LEAN);
      XY arrives = round.outside(to, high).towards(round.at(from), LEAN);
      bumps.add(new Path.Curve(leaves, arrives, foot));
    }
    return bumps;
  }

  private static boolean comesIn(EllipsePoints round, List<Path.Curve> bumps) {
    XY from = bumps.get(bumps.size() - 1).to();
    for (Path.Curve bump : bumps) {
      for (int i = 1; i < SAMPLES; i++) {
        if (round.holds(bump.at(from, (double) i / SAMPLES))) {
          return true;
        }
      }
      from = bump.to();
    }
    return false;
  }

  @Override
  public double reachMargins() {
    return 0.75 * HIGH_MARGINS * 1.18; // a curve goes three quarters as far as its control points
  }
}
