package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import java.awt.geom.Area;
import java.util.List;
import java.util.stream.Stream;

/** Draws outlines with their necks and tails as one, rounded where they meet. */
public final class JoinedOutline {

  /** Radii of the curve where a neck or a tail leaves a balloon, in capitals. House defaults. */
  private static final double RADIUS = 0.45;

  private static final double BURST_RADIUS = 0.3;
  private static final double ELECTRONIC_RADIUS = 0.15;

  private static final double SAME_PX = 0.01;

  private JoinedOutline() {}

  /** Radius of the curve where a neck or a tail leaves a balloon. */
  public static double cornerPx(ShapeKind shape, OutlineStyle style) {
    double capitals =
        switch (shape) {
          case BURST -> BURST_RADIUS;
          case ELECTRONIC -> ELECTRONIC_RADIUS;
          case ELLIPSE, ROUNDED_BOX, CAPTION_BOX, CLOUD, WAVY, NONE -> RADIUS;
        };
    return capitals * style.capitalPx();
  }

  /** The greatest distance from a neck or a tail at which the outline changes. */
  public static double reachPx(double cornerPx) {
    return RoundedCorners.MOST * cornerPx;
  }

  /**
   * The outline of all of it, in one part.
   *
   * @param balloons outlines; not empty
   * @param arms outlines of necks and tails
   * @param cornerPx radius of the curve where they meet; corners of their own stay as they are
   */
  public static Path of(List<Path> balloons, List<Path> arms, double cornerPx) {
    if (balloons.size() == 1 && arms.isEmpty()) {
      return balloons.get(0);
    }
    Area all = new Area();
    balloons.forEach(balloon -> all.add(new Area(balloon.toShape())));
    arms.forEach(arm -> all.add(new Area(arm.toShape())));
    Ring joined = Ring.largest(Path.of(all));
    List<XY> own = Stream.of(balloons, arms).flatMap(List::stream).flatMap(Path::ends).toList();
    return RoundedCorners.of(joined, at -> isOneOf(at, own), cornerPx).path();
  }

  private static boolean isOneOf(XY at, List<XY> points) {
    return points.stream().anyMatch(point -> point.distanceTo(at) < SAME_PX);
  }
}
