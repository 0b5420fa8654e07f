package io.github.readfall.rules.space;

import io.github.readfall.base.geom.Region;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A balloon whose tail crosses another balloon.
 *
 * @param overTail true if it crosses the other's tail; else its body
 * @param shared area that both cover
 * @param px the length of the shared part along the tail
 */
record Crossing(
    PlacedBalloon balloon, PlacedBalloon other, boolean overTail, Region shared, double px) {

  /** Tails that end so near to each other meet at a mouth. */
  private static final double SAME_TIP_DP = 1;

  /**
   * The balloons that a balloon's tail crosses on a strip; the balloon need not be on the strip.
   */
  static Stream<Crossing> of(PlacedBalloon balloon, CheckedStrip strip) {
    double limitPx = strip.limit(RuleSpec.TAIL_CROSSES);
    return balloon.tailBody().stream()
        .filter(whole -> !strip.others(balloon, whole.bounds(), 0).isEmpty())
        .flatMap(whole -> VisibleTail.of(balloon))
        .flatMap(
            tail ->
                strip.others(balloon, tail.region().bounds(), 0).stream()
                    .filter(other -> !other.isUnboxedEffect())
                    .flatMap(other -> of(balloon, tail, other, strip).stream()))
        .filter(crossing -> crossing.px() > limitPx + CheckedStrip.HAIR_PX);
  }

  private static Optional<Crossing> of(
      PlacedBalloon balloon, VisibleTail tail, PlacedBalloon other, CheckedStrip strip) {
    Region overBody = tail.region().intersection(other.body());
    if (CheckedStrip.isSeen(overBody)) {
      return Optional.of(new Crossing(balloon, other, false, overBody, along(tail, overBody)));
    }
    return VisibleTail.of(other)
        .filter(others -> !endTogether(tail, others, strip))
        .map(others -> tail.region().intersection(others.region()))
        .filter(CheckedStrip::isSeen)
        .findFirst()
        .map(shared -> new Crossing(balloon, other, true, shared, along(tail, shared)));
  }

  private static boolean endTogether(VisibleTail one, VisibleTail other, CheckedStrip strip) {
    return strip.dp(one.tail().tip().distanceTo(other.tail().tip())) < SAME_TIP_DP;
  }

  private static double along(VisibleTail tail, Region shared) {
    return shared.extentPx(tail.tail().root(), tail.tail().tip());
  }
}
