package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import java.util.ArrayList;
import java.util.List;

/**
 * Spikes on the inner area, hollow-sided and of uneven length. Proportions are house defaults, no
 * source.
 */
record Burst() implements Contour {

  /** In capitals. */
  private static final double APART = 1.44;

  private static final List<Double> LENGTHS = List.of(0.76, 0.48, 0.96, 0.56, 0.68, 0.4, 0.84);
  private static final int LEAST = 12;

  @Override
  public Path around(double a, double b, OutlineStyle style) {
    Superellipse round = new Superellipse(a, b, style.squareness());
    ArcLength way = new ArcLength(round);
    int spikes = Contour.evenCount(way.lengthPx() / (APART * style.capitalPx()), LEAST);
    List<Path.Step> steps = new ArrayList<>();
    steps.add(new Path.Move(round.at(way.angle(-0.5 / spikes))));
    for (int i = 0; i < spikes; i++) {
      double from = way.angle((i - 0.5) / spikes);
      double to = way.angle((i + 0.5) / spikes);
      double length = LENGTHS.get(i % LENGTHS.size()) * style.capitalPx();
      XY tip = round.outside(way.angle((double) i / spikes), length);
      double hollow = round.at(from).distanceTo(round.at(to)) * 0.28;
      steps.add(new Path.Curve(round.along(from, hollow), tip, tip));
      steps.add(new Path.Curve(tip, round.along(to, -hollow), round.at(to)));
    }
    steps.add(new Path.Close());
    return new Path(steps);
  }

  @Override
  public double reachCapitals() {
    return 0.96;
  }
}
