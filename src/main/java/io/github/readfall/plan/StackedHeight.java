package io.github.readfall.plan;

import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.Manner;
import io.github.readfall.strip.galley.Chain;
import java.util.ArrayList;
import java.util.List;

/**
 * Computes the room that the balloons of a panel need one below another in script order, with some
 * picture before the first words. Balloons side by side need less, so a panel with this room can
 * always be lettered. Lengths are strip pixels.
 */
public final class StackedHeight {

  /**
   * The greatest share of a panel that balloons may cover: one balloon fills at most 40 to 50 % of
   * a panel ("Dialogue Balloons: a User's Guide", webcomictriage.blogspot.com, 2007), taken here
   * for all of them.
   */
  static final double MOST_COVERED = 0.5;

  private StackedHeight() {}

  /**
   * The height that a panel needs.
   *
   * @param balloons of the panel, in script order; may be none
   * @param widthPx of the panel; positive
   * @return 0 if there are no balloons
   */
  public static double neededPx(List<SetBalloon> balloons, double widthPx, Spacing spacing) {
    if (balloons.isEmpty()) {
      return 0;
    }
    int last = balloons.size() - 1;
    SetBalloon lowest = balloons.get(last);
    double below = hasTail(lowest) ? spacing.tailRoomPx() : spacing.clearancePx();
    double stack =
        topsPx(balloons, widthPx, spacing).get(last)
            + lowest.box().height()
            + Math.max(below, spacing.clearancePx());
    return Math.max(stack, coveredPx2(balloons) / (MOST_COVERED * widthPx));
  }

  /** The width that a panel needs for the widest of its balloons; 0 if there are none. */
  public static double neededWidthPx(List<SetBalloon> balloons, Spacing spacing) {
    return balloons.stream()
        .mapToDouble(balloon -> balloon.box().width() + 2 * spacing.clearancePx())
        .max()
        .orElse(0);
  }

  /** The top of each balloon of that stack, below the top of its panel. */
  public static List<Double> topsPx(List<SetBalloon> balloons, double widthPx, Spacing spacing) {
    List<Double> tops = new ArrayList<>();
    double next = balloons.isEmpty() ? 0 : abovePx(balloons.get(0), widthPx, spacing);
    for (int i = 0; i < balloons.size(); i++) {
      SetBalloon balloon = balloons.get(i);
      tops.add(next);
      next += balloon.box().height() + gapPx(balloon, i + 1, balloons, spacing);
    }
    return tops;
  }

  /**
   * The picture above the first words. A caption may be at the panel's top; other words wait for
   * some picture.
   */
  private static double abovePx(SetBalloon first, double widthPx, Spacing spacing) {
    boolean docked = first.cue().kind() == CueKind.CAPTION;
    double picture = docked ? 0 : spacing.firstPicture() * widthPx;
    return Math.max(spacing.clearancePx(), picture);
  }

  private static double gapPx(
      SetBalloon balloon, int next, List<SetBalloon> balloons, Spacing spacing) {
    boolean joined =
        next < balloons.size()
            && balloons.get(next).joinedTo().filter(balloon.cue().id()::equals).isPresent();
    if (joined) {
      return Chain.gapPx(balloon);
    }
    return hasTail(balloon) ? spacing.tailRoomPx() : spacing.gapPx();
  }

  /** Returns true if it points at somebody; a voice from off the picture does not. */
  private static boolean hasTail(SetBalloon balloon) {
    return balloon.look().shape().hasTail() && !balloon.cue().has(Manner.VOICE_OVER);
  }

  private static double coveredPx2(List<SetBalloon> balloons) {
    return balloons.stream()
        .mapToDouble(balloon -> balloon.box().width() * balloon.box().height())
        .sum();
  }
}
