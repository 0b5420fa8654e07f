package io.github.readfall.strip.galley;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.type.balloon.Bridge;
import java.util.ArrayList;
import java.util.List;

/** Places joined balloons in a chain and connects them. */
public final class Chain {

  /** In capitals. House defaults, no source. */
  private static final double NECK = 0.36;

  private static final double NECK_WIDTH = 1.28;

  /**
   * Sideways offset of each balloon from the one above, in its own widths. House default, no
   * source.
   */
  private static final double ASIDE = 0.12;

  private Chain() {}

  /**
   * The places of joined balloons, each a little to the side of the one above.
   *
   * @param balloons from top to bottom; not empty
   * @param left true if the second is to the left of the first
   * @return the top left corner of each box; the first balloon's middle is at x = 0, its top at 0
   */
  public static List<XY> places(List<SetBalloon> balloons, boolean left) {
    List<XY> places = new ArrayList<>();
    double side = left ? 1 : -1;
    double y = 0;
    double middle = 0;
    for (int i = 0; i < balloons.size(); i++) {
      Box own = balloons.get(i).box();
      middle += i == 0 ? 0 : side * own.width() * (i % 2 == 0 ? ASIDE : -ASIDE);
      places.add(new XY(middle - own.width() / 2, y));
      y += own.height() + gapPx(balloons.get(i));
    }
    return places;
  }

  /** The distance from a balloon's top to the top of the balloon joined to it below. */
  public static double gapPx(SetBalloon above) {
    return NECK * above.outlineStyle().capitalPx();
  }

  /** The neck between two joined balloons, wherever they are. */
  public static Bridge neck(SetBalloon above, XY aboveAt, SetBalloon below, XY belowAt) {
    Box from = above.inner().movedBy(aboveAt.x(), aboveAt.y());
    Box to = below.inner().movedBy(belowAt.x(), belowAt.y());
    double lesser =
        Math.min(Math.min(from.width(), to.width()), Math.min(from.height(), to.height()));
    double width = Math.min(NECK_WIDTH * below.outlineStyle().capitalPx(), lesser / 2);
    boolean stacked = from.bottom() <= to.y() || to.bottom() <= from.y();
    if (stacked && overlapPx(from, to) > width) {
      double x = (Math.max(from.x(), to.x()) + Math.min(from.right(), to.right())) / 2;
      return new Bridge(new XY(x, from.centre().y()), new XY(x, to.centre().y()), width);
    }
    return new Bridge(from.centre(), to.centre(), width);
  }

  private static double overlapPx(Box a, Box b) {
    return Math.min(a.right(), b.right()) - Math.max(a.x(), b.x());
  }
}
