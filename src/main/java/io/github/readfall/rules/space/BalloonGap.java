package io.github.readfall.rules.space;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Region;
import io.github.readfall.base.geom.XY;
import io.github.readfall.lettering.typeset.SetLine;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.type.text.LineBox;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The gap between two balloons that are near and not joined. Each pair is judged by one rule alone:
 * by space/overlap if they overlap, by space/tangent if they touch, else by space/crowded.
 *
 * @param first in script order
 * @param second the other
 * @param px the least distance between their outlines; 0 if they touch or overlap
 * @param wayOff the shortest shift of the second that takes it off the first; none if they do not
 *     overlap
 * @param judge the rule that the distance is a matter of
 */
record BalloonGap(PlacedBalloon first, PlacedBalloon second, double px, XY wayOff, Judge judge) {

  /** Nearer than this two outlines look as if they touched. House default, no source. */
  static final double TOUCH_DP = 1;

  /** The rule that a distance is a matter of. */
  enum Judge {
    OVERLAP,
    TANGENT,
    CROWDED,
    NONE
  }

  /** Every pair of a galley that is for a judge, in script order. */
  static Stream<BalloonGap> of(CheckedStrip strip, Judge judge) {
    Limits limits = Limits.of(strip);
    return strip.galley().balloons().stream()
        .flatMap(
            balloon ->
                near(balloon, strip, limits)
                    .filter(other -> strip.isBefore(balloon, other))
                    .map(other -> between(balloon, other, limits)))
        .filter(gap -> gap.judge == judge);
  }

  private static Stream<PlacedBalloon> near(
      PlacedBalloon balloon, CheckedStrip strip, Limits limits) {
    Box bounds = balloon.body().bounds();
    double withinPx = Math.max(limits.crowdedPx, limits.touchPx);
    return strip.others(balloon, bounds, withinPx).stream()
        .filter(other -> other.body().bounds().distanceTo(bounds) < withinPx + 1);
  }

  private static BalloonGap between(PlacedBalloon first, PlacedBalloon second, Limits limits) {
    if (first.isUnboxedEffect() || second.isUnboxedEffect()) {
      return ofLetters(first, second, limits);
    }
    Region one = first.body();
    Region other = second.body();
    boolean overlap = one.meets(other) && CheckedStrip.isSeen(one.intersection(other));
    XY wayOff = overlap ? other.shiftOff(one) : new XY(0, 0);
    double px = overlap ? 0 : one.distanceTo(other);
    return new BalloonGap(first, second, px, wayOff, limits.judge(px, depth(wayOff)));
  }

  /**
   * The gap between letters: a sound effect may be over an outline as over the picture, but not
   * over letters.
   */
  private static BalloonGap ofLetters(PlacedBalloon first, PlacedBalloon second, Limits limits) {
    XY wayOff =
        letters(second)
            .flatMap(one -> letters(first).map(one::shiftOff))
            .max(Comparator.comparingDouble(BalloonGap::depth))
            .orElse(new XY(0, 0));
    boolean overlap = depth(wayOff) > limits.overlapPx + CheckedStrip.HAIR_PX;
    return new BalloonGap(first, second, 0, wayOff, overlap ? Judge.OVERLAP : Judge.NONE);
  }

  private static Stream<Region> letters(PlacedBalloon balloon) {
    return balloon.isUnboxedEffect()
        ? Stream.of(balloon.body())
        : balloon.set().lines().stream().map(line -> Region.of(box(line, balloon.at())));
  }

  private static Box box(SetLine line, XY at) {
    LineBox box = line.line().box();
    double x = at.x() + line.xPx();
    double y = at.y() + line.baselinePx();
    return Box.ofEdges(x + box.left(), y + box.top(), x + box.right(), y + box.bottom());
  }

  private static double depth(XY wayOff) {
    return wayOff.distanceTo(new XY(0, 0));
  }

  /** The distance that one must move to leave the other, in strip pixels. */
  double depthPx() {
    return depth(wayOff);
  }

  List<PlacedBalloon> both() {
    return List.of(first, second);
  }

  /** The area where the two come together. */
  Box box() {
    Region one = first.body();
    Region other = second.body();
    if (depthPx() > 0) {
      return one.intersection(other).bounds();
    }
    List<XY> ends = one.nearest(other);
    return at(ends.get(0)).union(at(ends.get(1)));
  }

  private static Box at(XY point) {
    return new Box(point.x(), point.y(), 0, 0);
  }

  /** Shifts of the second that leave so much room between the two; the reverse shifts the first. */
  List<XY> shifts(double roomPx) {
    Box one = first.body().bounds();
    Box other = second.body().bounds();
    Stream<XY> straight =
        Stream.of(
            new XY(one.right() + roomPx - other.x(), 0),
            new XY(one.x() - roomPx - other.right(), 0),
            new XY(0, one.bottom() + roomPx - other.y()),
            new XY(0, one.y() - roomPx - other.bottom()));
    return Stream.concat(Stream.of(apart(roomPx)), straight)
        .filter(shift -> depth(shift) > 0)
        .sorted(Comparator.comparingDouble(BalloonGap::depth))
        .toList();
  }

  /** The way off and on as far as there must be room; apart as they are, along the way between. */
  private XY apart(double roomPx) {
    double depth = depthPx();
    if (depth > 0) {
      return new XY(0, 0).towards(wayOff, (depth + roomPx) / depth);
    }
    if (px == 0) {
      return new XY(0, 0);
    }
    List<XY> ends = first.body().nearest(second.body());
    double further = (roomPx - px) / px;
    return new XY(
        (ends.get(1).x() - ends.get(0).x()) * further,
        (ends.get(1).y() - ends.get(0).y()) * further);
  }

  /** The limits that divide pairs among the rules, in strip pixels. */
  private record Limits(double overlapPx, double tangentPx, double touchPx, double crowdedPx) {

    static Limits of(CheckedStrip strip) {
      double tangentPx = strip.limitPx(RuleSpec.TANGENT);
      return new Limits(
          strip.limit(RuleSpec.OVERLAP),
          tangentPx,
          Math.min(strip.px(TOUCH_DP), tangentPx),
          strip.limitPx(RuleSpec.CROWDED));
    }

    /** Returns true if no depth of overlap is between those of two rules, so that none passes. */
    boolean forbidEveryTouch() {
      return touchPx > 0 && overlapPx + CheckedStrip.HAIR_PX < tangentPx;
    }

    Judge judge(double px, double depthPx) {
      if (depthPx > 0) {
        boolean decided = depthPx > overlapPx + CheckedStrip.HAIR_PX;
        return decided ? Judge.OVERLAP : depthPx < tangentPx ? Judge.TANGENT : Judge.NONE;
      }
      if (NumberText.isShort(px, touchPx)) {
        return Judge.TANGENT;
      }
      return NumberText.isShort(px, crowdedPx) ? Judge.CROWDED : Judge.NONE;
    }
  }

  /** Returns true if all balloons of a galley are far enough from this one, wherever it is. */
  static boolean isClear(PlacedBalloon balloon, CheckedStrip strip) {
    Limits limits = Limits.of(strip);
    return near(balloon, strip, limits).allMatch(other -> isClear(balloon, other, limits));
  }

  private static boolean isClear(PlacedBalloon one, PlacedBalloon other, Limits limits) {
    boolean outlined = !one.isUnboxedEffect() && !other.isUnboxedEffect();
    if (outlined && limits.forbidEveryTouch() && one.body().meets(other.body())) {
      return false; // known without measuring how deep they overlap
    }
    return between(one, other, limits).judge == Judge.NONE;
  }
}
