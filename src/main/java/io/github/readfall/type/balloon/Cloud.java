package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import java.util.ArrayList;
import java.util.List;

/** Round bumps on the inner area. Proportions are house defaults, no source. */
record Cloud() implements Contour {

  /** In capitals. */
  private static final double APART = 1.76;

  private static final double HIGH = 0.8;
  private static final double HIGHEST_OVER_WIDTH = 0.6;
  private static final double LEAN = 0.03; // keeps neighbours apart at the foot they share
  private static final int LEAST = 8;
  private static final int MOST = 60;
  private static final int SAMPLES = 16;

  /** Draws as many more bumps as needed so that none cuts the corner of a flat outline's ends. */
  @Override
  public Path around(double a, double b, OutlineStyle style) {
    Superellipse round = new Superellipse(a, b, style.squareness());
    ArcLength way = new ArcLength(round);
    int feet = Contour.evenCount(way.lengthPx() / (APART * style.capitalPx()), LEAST);
    List<Path.Curve> bumps = bumps(round, way, feet, style.capitalPx());
    while (comesIn(round, bumps) && feet < MOST) {
      feet += 2;
      bumps = bumps(round, way, feet, style.capitalPx());
    }
    List<Path.Step> steps = new ArrayList<>();
    steps.add(new Path.Move(bumps.get(bumps.size() - 1).to()));
    steps.addAll(bumps);
    steps.add(new Path.Close());
    return new Path(steps);
  }

  private static List<Path.Curve> bumps(
      Superellipse round, ArcLength way, int feet, double capitalPx) {
    List<Path.Curve> bumps = new ArrayList<>();
    for (int i = 0; i < feet; i++) {
      double from = way.angle((i - 0.5) / feet);
      double to = way.angle((i + 0.5) / feet);
      XY foot = round.at(to);
      double most = HIGHEST_OVER_WIDTH * foot.distanceTo(round.at(from));
      double high = Math.min(most, HIGH * capitalPx);
      high *= i % 3 == 1 ? 1.18 : 1; // alike, but not the same
      XY leaves = round.outside(from, high).towards(foot, LEAN);
      XY arrives = round.outside(to, high).towards(round.at(from), LEAN);
      bumps.add(new Path.Curve(leaves, arrives, foot));
    }
    return bumps;
  }

  private static boolean comesIn(Superellipse round, List<Path.Curve> bumps) {
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
  public double reachCapitals() {
    return 0.75 * HIGH * 1.18; // a curve goes three quarters as far as its control points
  }
}
