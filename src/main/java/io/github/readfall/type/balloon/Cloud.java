package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import java.util.ArrayList;
import java.util.List;

/** Round bumps of uneven size on the inner area. Proportions are house defaults, no source. */
record Cloud() implements Contour {

  /** In capitals. */
  private static final double APART = 1.9;

  private static final double HIGHEST = 1; // of control points
  private static final double HIGH_OVER_WIDTH = 0.6;

  private static final double SPREAD = 0.35;
  private static final double LEAN = 0.03; // keeps neighbours apart at the foot they share
  private static final int LEAST = 7;
  private static final int MOST = 60;
  private static final int SAMPLES = 16;

  /** Draws as many more bumps as needed so that none cuts the corner of a flat outline's ends. */
  @Override
  public Path around(double a, double b, OutlineStyle style) {
    Superellipse round = new Superellipse(a, b, style.squareness());
    ArcLength way = new ArcLength(round);
    int count = Contour.count(way.lengthPx() / (APART * style.capitalPx()), LEAST);
    List<Path.Curve> bumps = bumps(round, way, count, style);
    while (comesIn(round, bumps) && count < MOST) {
      count++;
      bumps = bumps(round, way, count, style);
    }
    List<Path.Step> steps = new ArrayList<>();
    steps.add(new Path.Move(bumps.get(bumps.size() - 1).to()));
    steps.addAll(bumps);
    steps.add(new Path.Close());
    return new Path(steps);
  }

  private static List<Path.Curve> bumps(
      Superellipse round, ArcLength way, int count, OutlineStyle style) {
    Feet feet = Feet.of(round, way, count, SPREAD, style.random());
    List<Path.Curve> bumps = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      XY foot = feet.at(i + 1);
      double high = Math.min(HIGH_OVER_WIDTH * feet.gapPx(i), HIGHEST * style.capitalPx());
      XY leaves = round.outside(feet.angle(i), high).towards(foot, LEAN);
      XY arrives = round.outside(feet.angle(i + 1), high).towards(feet.at(i), LEAN);
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
    return 0.75 * HIGHEST; // a curve goes three quarters as far as its control points
  }
}
