package io.github.readfall.strip.galley;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.type.balloon.Neck;
import java.util.ArrayList;
import java.util.List;

/** Places joined balloons in a chain and connects them. */
public final class Chain {

  /** Length of a neck, in capitals. House default, no source. */
  private static final double NECK = 0.5;

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
  public static Neck neck(SetBalloon above, XY aboveAt, SetBalloon below, XY belowAt) {
    return Neck.between(above.innerAt(aboveAt), below.innerAt(belowAt));
  }
}
