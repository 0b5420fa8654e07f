package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import java.awt.geom.Area;
import java.util.List;

/** Draws outlines with their necks and tails as one, rounded where they meet. */
public final class JoinedOutline {

  /** Radius of the curve where a neck or a tail leaves a balloon, in capitals. House default. */
  private static final double RADIUS = 0.45;

  private static final double SAME_PX = 0.01;

  private JoinedOutline() {}

  /** Radius of the curve where a neck or a tail leaves a balloon; 0 if its corners are sharp. */
  public static double cornerPx(ShapeKind shape, OutlineStyle style) {
    boolean sharp = shape == ShapeKind.BURST || shape == ShapeKind.ELECTRONIC;
    return sharp ? 0 : RADIUS * style.capitalPx();
  }

  /** The greatest distance from a neck or a tail at which the outline changes. */
  public static double reachPx(double cornerPx) {
    return RoundedCorners.MOST * cornerPx;
  }

  /**
   * The outline of all of it, in one part.
   *
   * @param balloons outlines, whose own corners stay as they are; not empty
   * @param arms outlines of necks and tails
   * @param cornerPx radius of the curve where they meet
   */
  public static Path of(List<Path> balloons, List<Path> arms, double cornerPx) {
    if (balloons.size() == 1 && arms.isEmpty()) {
      return balloons.get(0);
    }
    Area all = new Area();
    balloons.forEach(balloon -> all.add(new Area(balloon.toShape())));
    arms.forEach(arm -> all.add(new Area(arm.toShape())));
    Ring joined = Ring.largest(Path.of(all));
    if (cornerPx == 0) {
      return joined.path();
    }
    List<XY> own = balloons.stream().flatMap(Path::ends).toList();
    return RoundedCorners.of(joined, at -> isOneOf(at, own), cornerPx).path();
  }

  private static boolean isOneOf(XY at, List<XY> points) {
    return points.stream().anyMatch(point -> point.distanceTo(at) < SAME_PX);
  }
}
