package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;

/**
 * Draws a tail from a balloon towards a point: it leaves where a line from the balloon's middle
 * crosses the outline (common practice: a tail points from the middle of the text to the speaker).
 */
public final class TailRoot {

  /** In capitals. House defaults, no source. */
  private static final double FOOT = 0.92;

  private static final double SUNK = 0.2;

  /**
   * Greatest width of a foot, as a share of the balloon's lesser side. House default, no source.
   */
  private static final double MOST_FOOT = 0.4;

  /** Bow of a tail over its length: enough to look alive. House default, no source. */
  private static final double BEND = 0.1;

  private TailRoot() {}

  /**
   * The tail of a balloon.
   *
   * @param shape of the outline
   * @param inner the outline's inner area, in strip pixels
   * @param reachPx greatest distance of the drawn outline from it
   * @param capitalPx height of a capital of its text; positive
   * @param tip where the tail ends; outside the outline
   */
  public static Tail tail(ShapeKind shape, Box inner, double reachPx, double capitalPx, XY tip) {
    XY middle = inner.centre();
    double sunkPx = shape == ShapeKind.CLOUD ? -reachPx : SUNK * capitalPx;
    XY root = middle.towards(tip, rootShare(shape, inner, middle, tip, sunkPx));
    double footPx = Math.min(FOOT * capitalPx, MOST_FOOT * Math.min(inner.width(), inner.height()));
    double bend = tip.x() < middle.x() ? BEND : -BEND;
    return new Tail(root, tip, footPx, bend);
  }

  private static double rootShare(ShapeKind shape, Box inner, XY middle, XY tip, double sunkPx) {
    double dx = Math.abs(tip.x() - middle.x());
    double dy = Math.abs(tip.y() - middle.y());
    double a = Math.max(1, inner.width() / 2 - sunkPx);
    double b = Math.max(1, inner.height() / 2 - sunkPx);
    double share =
        shape.isRound()
            ? 1 / Math.sqrt(dx * dx / (a * a) + dy * dy / (b * b))
            : Math.min(a / Math.max(dx, 1e-9), b / Math.max(dy, 1e-9));
    return Math.min(share, 1);
  }
}
