package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A wave of uneven lengths and heights that never comes inside the inner area. Proportions are
 * house defaults, no source.
 */
record Wavy() implements Contour {

  /** In capitals. */
  private static final double WAVE = 1.9;

  private static final double LOWEST = 0.2;
  private static final double HIGHEST = 0.38;

  private static final double SPREAD = 0.25;
  private static final double ROUND = 0.26; // of a wave: the reach of control points
  private static final int LEAST = 7;
  private static final double CLEAR_PX = 0.3;

  @Override
  public Path around(double a, double b, OutlineStyle style) {
    Superellipse round = new Superellipse(a, b, style.squareness());
    ArcLength way = new ArcLength(round);
    SplittableRandom random = style.random();
    int waves = Contour.count(way.lengthPx() / (WAVE * style.capitalPx()), LEAST);
    Feet feet = Feet.of(round, way, waves, SPREAD, random);
    List<Path.Step> steps = new ArrayList<>();
    steps.add(new Path.Move(round.outside(feet.angle(0), CLEAR_PX)));
    for (int i = 0; i < waves; i++) {
      double reach = ROUND * feet.gapPx(i);
      double high = random.nextDouble(LOWEST, HIGHEST) * style.capitalPx();
      Tangent foot = new Tangent(round, feet.angle(i), CLEAR_PX);
      Tangent crest = new Tangent(round, feet.angle(i, 0.5), high);
      Tangent next = new Tangent(round, feet.angle(i + 1), CLEAR_PX);
      XY to = i + 1 < waves ? next.along(0) : ((Path.Move) steps.get(0)).to();
      steps.add(new Path.Curve(foot.along(reach), crest.along(-reach), crest.along(0)));
      steps.add(new Path.Curve(crest.along(reach), next.along(-reach), to));
    }
    steps.add(new Path.Close());
    return new Path(steps);
  }

  /** A line along the curve, some way outside it. */
  private record Tangent(Superellipse round, double angle, double outPx) {
    XY along(double byPx) {
      XY out = round.outwards(angle);
      return round.along(angle, byPx).plus(out.x() * outPx, out.y() * outPx);
    }
  }

  @Override
  public double reachCapitals() {
    return HIGHEST;
  }
}
