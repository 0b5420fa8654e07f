package io.github.readfall.export.pdf;

import io.github.readfall.base.geom.Box;
import io.github.readfall.plan.CutPlanner;
import io.github.readfall.plan.Obstacle;
import io.github.readfall.strip.galley.Galley;
import java.util.ArrayList;
import java.util.List;

/**
 * The segment of a strip on one page.
 *
 * @param index from 0
 * @param topPx in strip pixels
 * @param bottomPx greater than {@code topPx}
 */
record Segment(int index, double topPx, double bottomPx) {

  double heightPx() {
    return bottomPx - topPx;
  }

  /** The segments of a strip, cut through no balloon that is not taller than a page. */
  static List<Segment> of(Galley galley, Paper paper) {
    List<Segment> segments = new ArrayList<>();
    double top = 0;
    List<Double> ends =
        new ArrayList<>(CutPlanner.plan(galley.heightPx(), paper.segmentPx(), Obstacle.of(galley)));
    ends.add(galley.heightPx());
    for (double end : ends) {
      if (end > top) {
        segments.add(new Segment(segments.size(), top, end));
      }
      top = end;
    }
    return List.copyOf(segments);
  }

  /** The one in which a height is; the first or last where it is beyond them. */
  static Segment at(double yPx, List<Segment> segments) {
    Segment found = segments.get(0);
    for (Segment segment : segments) {
      if (segment.topPx() <= yPx) {
        found = segment;
      }
    }
    return found;
  }

  /** Its box on a strip of a width. */
  Box box(double widthPx) {
    return new Box(0, topPx, widthPx, heightPx());
  }
}
