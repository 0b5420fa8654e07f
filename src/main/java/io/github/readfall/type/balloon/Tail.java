package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import java.util.ArrayList;
import java.util.List;

/**
 * The pointer from a balloon to its speaker: a wedge that bends and ends in a point.
 *
 * @param root the middle of its foot, inside the outline
 * @param tip where it ends
 * @param footPx width of its foot; positive
 * @param bend sideways bow over its length; positive bows to the left of the way from root to tip
 */
public record Tail(XY root, XY tip, double footPx, double bend) {

  /** A wedge wants its waist this far along. House defaults, no source. */
  private static final double WAIST = 0.55;

  private static final double WAIST_WIDTH = 0.42;

  /** Bubbles want this many of their sizes along the way. House default, no source. */
  private static final double BUBBLES = 1.6;

  /** The same tail at another place. */
  public Tail movedBy(double dx, double dy) {
    return new Tail(root.plus(dx, dy), tip.plus(dx, dy), footPx, bend);
  }

  /** The wedge's outline, to be joined with the balloon's. */
  public Path outline() {
    double length = Math.max(1, root.distanceTo(tip));
    double sideX = (tip.y() - root.y()) / length;
    double sideY = -(tip.x() - root.x()) / length;
    XY waist = root.towards(tip, WAIST).plus(sideX * bend * length, sideY * bend * length);
    double half = footPx / 2;
    double narrow = half * WAIST_WIDTH;
    XY left = root.plus(sideX * half, sideY * half);
    XY right = root.plus(-sideX * half, -sideY * half);
    XY waistLeft = waist.plus(sideX * narrow, sideY * narrow);
    XY waistRight = waist.plus(-sideX * narrow, -sideY * narrow);
    List<Path.Step> steps = new ArrayList<>();
    steps.add(new Path.Move(left));
    steps.add(new Path.Curve(left.towards(waistLeft, 0.5), waistLeft, tip));
    steps.add(new Path.Curve(waistRight, right.towards(waistRight, 0.5), right));
    steps.add(new Path.Close());
    return new Path(steps);
  }

  /** Bubbles that shrink along the way, from the outline to the tip: for a thought. */
  public List<Path> bubbles() {
    List<Path> bubbles = new ArrayList<>();
    double length = Math.max(1, root.distanceTo(tip));
    double sideX = (tip.y() - root.y()) / length * bend * length;
    double sideY = -(tip.x() - root.x()) / length * bend * length;
    double size = Math.min(footPx, length / BUBBLES);
    double[][] places = {{0.42, 0.36}, {0.72, 0.25}, {0.95, 0.15}};
    for (double[] place : places) {
      double bow = 4 * place[0] * (1 - place[0]);
      XY middle = root.towards(tip, place[0]).plus(sideX * bow, sideY * bow);
      double radius = size * place[1];
      bubbles.add(
          new Superellipse(radius * 1.15, radius, 2).path().movedBy(middle.x(), middle.y()));
    }
    return bubbles;
  }
}
