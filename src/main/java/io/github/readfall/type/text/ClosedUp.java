package io.github.readfall.type.text;

import java.util.ArrayList;
import java.util.List;

/**
 * The runs of a line, its full-width marks moved together. Only places change: every advance stays
 * the shaper's.
 *
 * @param runs from left to right
 * @param givenUpPx how much shorter the line has become
 */
record ClosedUp(List<PlacedRun> runs, double givenUpPx) {

  static ClosedUp of(List<PlacedRun> runs, Compression marks) {
    if (marks == Compression.NONE) {
      return new ClosedUp(runs, 0);
    }
    List<PlacedRun> moved = new ArrayList<>();
    Slack before = Slack.EDGE;
    double givenUpPx = 0;
    for (PlacedRun run : runs) {
      double startPx = givenUpPx;
      double[] toTheLeft = new double[run.glyphs().size()];
      for (int i = 0; i < toTheLeft.length; i++) {
        Slack own = run.glyphs().isDrawn(i) ? Slack.of(run, i, marks) : before;
        givenUpPx += run.glyphs().isDrawn(i) ? before.givenUpPx(own) : 0;
        toTheLeft[i] = (givenUpPx - startPx) / run.type().pxPerUnit();
        before = own;
      }
      moved.add(run.moved(startPx, toTheLeft));
    }
    return new ClosedUp(moved, givenUpPx + before.givenUpPx(Slack.EDGE));
  }
}
