package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Spikes on the inner area, hollow-sided, unevenly spaced, long and leaning. Every second step ends
 * between two spikes. Proportions are house defaults, no source.
 */
record Burst() implements Contour {

  /** In capitals. */
  private static final double APART = 1.4;

  private static final double SHORTEST = 0.5;
  private static final double LONGEST = 1.05;

  private static final double SPREAD = 0.3;
  private static final double LEAN = 0.12;
  private static final double HOLLOW = 0.26;
  private static final int LEAST = 11;

  @Override
  public Path around(double a, double b, OutlineStyle style) {
    Superellipse round = new Superellipse(a, b, style.squareness());
    ArcLength way = new ArcLength(round);
    SplittableRandom random = style.random();
    int spikes = Contour.count(way.lengthPx() / (APART * style.capitalPx()), LEAST);
    Feet feet = Feet.of(round, way, spikes, SPREAD, random);
    List<Path.Step> steps = new ArrayList<>();
    steps.add(new Path.Move(feet.at(0)));
    for (int i = 0; i < spikes; i++) {
      double lean = random.nextDouble(-LEAN, LEAN);
      double share = random.nextDouble() * (i % 2 == 0 ? 0.5 : 1); // now and then two short ones
      double length = LONGEST - (LONGEST - SHORTEST) * share;
      XY tip = round.outside(feet.angle(i, 0.5 + lean), length * style.capitalPx());
      double hollow = feet.gapPx(i) * HOLLOW;
      XY to = i + 1 < spikes ? feet.at(i + 1) : feet.at(0);
      steps.add(new Path.Curve(round.along(feet.angle(i), hollow), tip, tip));
      steps.add(new Path.Curve(tip, round.along(feet.angle(i + 1), -hollow), to));
    }
    steps.add(new Path.Close());
    return new Path(steps);
  }

  @Override
  public double reachCapitals() {
    return LONGEST;
  }
}
