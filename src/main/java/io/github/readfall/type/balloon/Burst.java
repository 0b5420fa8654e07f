package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import java.util.ArrayList;
import java.util.List;

/**
 * Spikes on the ellipse, hollow-sided and of uneven length. Proportions are house defaults, no
 * source.
 */
record Burst() implements Contour {

  private static final double APART_MARGINS = 3.6;
  private static final int LEAST = 12;
  private static final List<Double> LENGTHS_MARGINS = List.of(1.9, 1.2, 2.4, 1.4, 1.7, 1.0, 2.1);

  @Override
  public Path around(double a, double b, double unitPx) {
    EllipsePoints round = EllipsePoints.spaced(a, b, APART_MARGINS * unitPx, LEAST);
    List<Double> feet = round.angles();
    List<Path.Step> steps = new ArrayList<>();
    steps.add(new Path.Move(round.at(feet.get(0))));
    for (int i = 0; i < feet.size(); i++) {
      double from = feet.get(i);
      double to = feet.get((i + 1) % feet.size());
      double length = LENGTHS_MARGINS.get(i % LENGTHS_MARGINS.size()) * unitPx;
      XY tip = round.outside(round.between(from, to), length);
      double hollow = round.at(from).distanceTo(round.at(to)) * 0.28;
      steps.add(curve(round.along(from, hollow), tip, tip));
      steps.add(curve(tip, round.along(to, -hollow), round.at(to)));
    }
    steps.add(new Path.Close());
    return new Path(steps);
  }

  private static Path.Curve curve(XY control1, XY control2, XY to) {
    return new Path.Curve(control1, control2, to);
  }

  @Override
  public double reachMargins() {
    return 2.4;
  }
}
