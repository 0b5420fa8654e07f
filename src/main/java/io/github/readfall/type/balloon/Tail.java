package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import java.util.ArrayList;
import java.util.List;

/**
 * The pointer from a balloon to its speaker: a wedge that bends and ends in a point.
 *
 * @param shape of the balloon
 * @param root the middle of its foot, inside the outline; of a thought, outside of it
 * @param tip where it ends
 * @param foot from the middle of its foot to the left end, looking towards the tip
 * @param bend sideways bow over its length; positive bows to the left of the way from root to tip
 */
public record Tail(ShapeKind shape, XY root, XY tip, XY foot, double bend) {

  /** Half widths a third and two thirds along, over that of the foot. House defaults, no source. */
  private static final List<Double> OUTER = List.of(0.62, 0.27);

  private static final List<Double> INNER = List.of(0.42, 0.14);

  /** The same of a burst's spike, which has to cover the one that it is drawn out of. */
  private static final List<Double> SPIKE = List.of(0.66, 0.3);

  /** In half feet. House defaults, no source. */
  private static final double BOLT_ASIDE = 0.75;

  private static final double BOLT_WIDTH = 0.12;

  /** Length of the part below the foot, hidden in the balloon, in feet. */
  private static final double HIDDEN = 0.7;

  private static final double HIDDEN_WIDTH = 0.7;

  /** Radii of a thought's bubbles over that of the one before. House default, no source. */
  private static final double SHRINKS = 0.68;

  /** Radius of the first bubble at most, in feet. House default, no source. */
  static final double FIRST_BUBBLE = 0.5;

  /** Least distance between two bubbles, in radii of the larger. House default, no source. */
  private static final double BETWEEN = 0.8;

  private static final double FLAT = 1.12; // width of a bubble across the way over its length

  /** The same tail at another place. */
  public Tail movedBy(double dx, double dy) {
    return new Tail(shape, root.plus(dx, dy), tip.plus(dx, dy), foot, bend);
  }

  /** Width of its foot. */
  private double footPx() {
    return 2 * foot.distanceTo(new XY(0, 0));
  }

  private double length() {
    return Math.max(1, root.distanceTo(tip));
  }

  /** A point a share along and so much to the left of the straight way. */
  private XY at(double share, double leftPx) {
    double leftX = (tip.y() - root.y()) / length();
    double leftY = -(tip.x() - root.x()) / length();
    return root.towards(tip, share).plus(leftX * leftPx, leftY * leftPx);
  }

  /** The pointer's outline, to be joined with the balloon's. */
  public Path outline() {
    return shape == ShapeKind.ELECTRONIC ? bolt() : wedge();
  }

  /** A flash of lightning: two wedges, the second beside the end of the first. */
  private Path bolt() {
    double half = Math.copySign(footPx() / 2, bend);
    double hidden = -HIDDEN * footPx() / length();
    return Path.polygon(
        List.of(
            at(hidden, half * HIDDEN_WIDTH),
            at(0, half),
            at(0.62, half * BOLT_ASIDE),
            at(0.5, half * BOLT_WIDTH),
            tip,
            at(0.38, -half * BOLT_ASIDE),
            at(0.5, -half * BOLT_WIDTH),
            at(0, -half),
            at(hidden, -half * HIDDEN_WIDTH)));
  }

  private Path wedge() {
    double half = footPx() / 2;
    double bowPx = bend * length() * 4 / 3; // a curve goes three quarters as far as its controls
    List<Double> inner = shape == ShapeKind.BURST ? SPIKE : INNER;
    List<Double> outer = shape == ShapeKind.BURST ? SPIKE : OUTER;
    List<Double> left = bend > 0 ? outer : inner;
    List<Double> right = bend > 0 ? inner : outer;
    double hidden = -HIDDEN * footPx() / length();
    return new Path(
        List.of(
            new Path.Move(root.plus(foot.x(), foot.y())),
            new Path.Curve(
                at(0.3, bowPx + half * left.get(0)), at(0.68, bowPx + half * left.get(1)), tip),
            new Path.Curve(
                at(0.68, bowPx - half * right.get(1)),
                at(0.3, bowPx - half * right.get(0)),
                root.plus(-foot.x(), -foot.y())),
            new Path.Line(at(hidden, -half * HIDDEN_WIDTH)),
            new Path.Line(at(hidden, half * HIDDEN_WIDTH)),
            new Path.Close()));
  }

  /**
   * Separate bubbles that shrink along the way, the last one's edge at the tip: for a thought.
   * Three of them, and a fourth if there is room for all at full size.
   */
  public List<Path> bubbles() {
    double full = FIRST_BUBBLE * footPx();
    int count = length() >= full * (2 + BETWEEN) * shrinking(4) ? 4 : 3;
    double first = Math.min(full, length() / ((2 + BETWEEN) * shrinking(count)));
    double between = length() / (first * shrinking(count)) - 2;
    double lastRadius = first * StrictMath.pow(SHRINKS, count - 1.0);
    List<Path> bubbles = new ArrayList<>();
    double along = 0;
    for (int i = 0; i < count; i++) {
      double radius = first * StrictMath.pow(SHRINKS, i);
      double middle = along + (between + 1) * radius;
      double share = middle / (length() - lastRadius);
      bubbles.add(bubble(middle, 4 * bend * length() * share * (1 - share), radius));
      along = middle + radius;
    }
    return bubbles;
  }

  /** The sum of so many radii, the first being 1. */
  private static double shrinking(int count) {
    return (1 - StrictMath.pow(SHRINKS, count)) / (1 - SHRINKS);
  }

  private Path bubble(double alongPx, double leftPx, double radius) {
    XY middle = at(alongPx / length(), leftPx);
    XY ahead = at((alongPx + radius) / length(), leftPx);
    XY aside = at(alongPx / length(), leftPx + FLAT * radius);
    return new Superellipse(1, 1, 2).path().mapped(unit -> mapped(unit, middle, ahead, aside));
  }

  private static XY mapped(XY unit, XY middle, XY ahead, XY aside) {
    return middle.plus(
        unit.x() * (ahead.x() - middle.x()) + unit.y() * (aside.x() - middle.x()),
        unit.x() * (ahead.y() - middle.y()) + unit.y() * (aside.y() - middle.y()));
  }
}
