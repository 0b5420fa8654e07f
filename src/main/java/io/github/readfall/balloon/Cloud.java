package io.github.readfall.balloon;

import io.github.readfall.geom.Path;
import io.github.readfall.geom.XY;
import java.util.ArrayList;
import java.util.List;

/** Round bumps that stand on the ellipse. Proportions are house defaults, no source. */
record Cloud() implements Contour {

  private static final double APART_MARGINS = 4.4;
  private static final double HIGH_MARGINS = 2.0;
  private static final int LEAST = 8;

  @Override
  public Path around(double a, double b, double unitPx) {
    RoundTheEllipse round = RoundTheEllipse.spaced(a, b, APART_MARGINS * unitPx, LEAST);
    List<Double> feet = round.angles();
    List<Path.Step> steps = new ArrayList<>();
    steps.add(new Path.Move(round.at(feet.get(0))));
    for (int i = 0; i < feet.size(); i++) {
      double from = feet.get(i);
      double to = round.after(feet, i);
      double high = HIGH_MARGINS * unitPx * (i % 3 == 1 ? 1.18 : 1); // alike, but not the same
      XY foot = round.at(to);
      steps.add(
          new Path.Curve(control(round, from, to, high), control(round, to, from, high), foot));
    }
    steps.add(new Path.Close());
    return new Path(steps);
  }

  /** Leaves a foot outwards, leaning a little away from the bump's middle. */
  private static XY control(RoundTheEllipse round, double foot, double other, double highPx) {
    XY out = round.outside(foot, highPx);
    XY chord = round.at(other);
    XY at = round.at(foot);
    return out.plus((at.x() - chord.x()) * 0.1, (at.y() - chord.y()) * 0.1);
  }

  @Override
  public double reachMargins() {
    return HIGH_MARGINS * 1.18;
  }
}
