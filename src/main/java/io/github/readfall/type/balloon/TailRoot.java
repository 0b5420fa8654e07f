package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Draws a tail from a balloon towards a point: it leaves where a line from the balloon's middle
 * crosses the outline (common practice: a tail points from the middle of the text to the speaker).
 */
public final class TailRoot {

  /** In capitals. House defaults, no source. */
  private static final double FOOT = 1;

  private static final double SUNK = 0.2;

  /** From a cloud to the first bubble of a thought's tail. */
  private static final double CLEAR = 0.1;

  /**
   * Greatest width of a foot, as a share of the balloon's lesser side. House default, no source.
   */
  private static final double MOST_FOOT = 0.4;

  /**
   * Least and greatest bow of a tail over its length: enough to look alive, and little enough that
   * it points where its ends do. House default, no source.
   */
  private static final double LEAST_BEND = 0.07;

  private static final double MOST_BEND = 0.12;

  /** A tip is aside if it is farther from the middle than this, in widths. House default. */
  private static final double ASIDE = 0.1;

  private static final double DISC_STEP = 0.25;

  private TailRoot() {}

  /**
   * The tail of a balloon.
   *
   * @param drawn the balloon's outline
   * @param tip where the tail ends; outside the outline
   */
  public static Tail tail(InnerArea inner, Path drawn, XY tip) {
    OutlineStyle style = inner.style();
    if (inner.shape() == ShapeKind.BURST) {
      return spike(inner, drawn, tip);
    }
    double lesser = Math.min(inner.box().width(), inner.box().height());
    double footPx = Math.min(FOOT * style.capitalPx(), MOST_FOOT * lesser);
    XY root =
        inner.shape() == ShapeKind.CLOUD
            ? beyond(drawn, inner.middle(), tip, footPx * Tail.FIRST_BUBBLE)
                .towards(
                    tip, CLEAR * style.capitalPx() / Math.max(1, inner.middle().distanceTo(tip)))
            : under(inner, tip, SUNK * style.capitalPx());
    return new Tail(inner.shape(), root, tip, left(root, tip, footPx / 2), bend(inner, tip));
  }

  /** A way so far to the left of the way from one point to another. */
  private static XY left(XY from, XY to, double byPx) {
    double length = Math.max(1, from.distanceTo(to));
    return new XY((to.y() - from.y()) / length * byPx, (from.x() - to.x()) / length * byPx);
  }

  /** A burst's spike that points best to the tip, drawn out to it. */
  private static Tail spike(InnerArea inner, Path drawn, XY tip) {
    List<XY> ends = drawn.ends().toList();
    Tail best = spike(inner, ends.get(0), ends.get(2), tip);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i + 2 < ends.size(); i += 2) {
      Tail spike = spike(inner, ends.get(i), ends.get(i + 2), tip);
      double off =
          2 * angle(spike.root(), ends.get(i + 1), tip) + angle(inner.middle(), spike.root(), tip);
      best = off < least ? spike : best;
      least = Math.min(off, least);
    }
    return best;
  }

  private static Tail spike(InnerArea inner, XY from, XY to, XY tip) {
    XY root = from.towards(to, 0.5);
    XY foot = new XY((to.x() - from.x()) / 2, (to.y() - from.y()) / 2);
    XY left = left(root, tip, 1);
    double side = Math.signum(foot.x() * left.x() + foot.y() * left.y());
    return new Tail(
        inner.shape(), root, tip, new XY(foot.x() * side, foot.y() * side), bend(inner, tip) / 2);
  }

  /** The angle at which two points are seen from a third, in radians. */
  private static double angle(XY from, XY one, XY other) {
    double ax = one.x() - from.x();
    double ay = one.y() - from.y();
    double bx = other.x() - from.x();
    double by = other.y() - from.y();
    return StrictMath.atan2(Math.abs(ax * by - ay * bx), ax * bx + ay * by);
  }

  /** The point so far inside the edge. */
  private static XY under(InnerArea inner, XY tip, double sunkPx) {
    double wayPx = inner.middle().distanceTo(tip);
    double share = inner.edgeShare(tip) - sunkPx / Math.max(1, wayPx);
    return inner.middle().towards(tip, Math.max(0, Math.min(share, 1)));
  }

  /** The nearest point to an outline at which a disc beyond it does not touch the outline. */
  private static XY beyond(Path drawn, XY middle, XY tip, double radiusPx) {
    double wayPx = Math.max(1, middle.distanceTo(tip));
    double most = 0;
    for (double aside = -1; aside <= 1; aside += DISC_STEP) {
      XY off = left(middle, tip, aside * radiusPx);
      double crossing =
          Crossing.last(drawn, middle.plus(off.x(), off.y()), tip.plus(off.x(), off.y()));
      double recedesPx = radiusPx * (1 - Math.sqrt(Math.max(0, 1 - aside * aside)));
      most = Math.max(most, crossing - recedesPx / wayPx);
    }
    return middle.towards(tip, Math.min(most, 1));
  }

  /** Bows away from the plumb line if the tip is aside, else to either side. */
  private static double bend(InnerArea inner, XY tip) {
    SplittableRandom random = inner.style().random();
    double bend = random.nextDouble(LEAST_BEND, MOST_BEND);
    double aside = (tip.x() - inner.middle().x()) / inner.box().width();
    boolean left = Math.abs(aside) > ASIDE ? aside < 0 : random.nextBoolean();
    return left ? bend : -bend;
  }
}
