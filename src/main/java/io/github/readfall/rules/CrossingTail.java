package io.github.readfall.rules;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.geom.Region;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A tail that runs across another balloon or another tail, so that it is lost who speaks. */
final class CrossingTail implements Rule {

  private static final String ID = "flow/tail-crosses";

  /** Tails that end so near to each other meet at a mouth. */
  private static final double SAME_TIP_DP = 1;

  /**
   * A tail and what it crosses.
   *
   * @param overTail whether it crosses the other's tail; else its body
   * @param shared what both cover
   * @param px the length of it that does, along the tail
   */
  record Crossing(
      PlacedBalloon balloon, PlacedBalloon other, boolean overTail, Region shared, double px) {}

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Severity severity() {
    return Severity.ERROR;
  }

  @Override
  public Stream<Finding> check(Galley galley) {
    Neighbourhood around = Neighbourhood.of(galley);
    double limitPx = galley.style().limit(ID, 0);
    return galley.balloons().stream()
        .flatMap(balloon -> crossings(balloon, around))
        .filter(one -> !one.overTail() || around.isBefore(one.balloon(), one.other()))
        .map(crossing -> finding(crossing, limitPx));
  }

  /** What a balloon's tail crosses, wherever the balloon is. */
  static Stream<Crossing> crossings(PlacedBalloon balloon, Neighbourhood around) {
    double limitPx = around.galley().style().limit(ID, 0);
    return balloon.tailBody().stream()
        .filter(whole -> !around.others(balloon, whole.bounds(), 0).isEmpty())
        .flatMap(whole -> VisibleTail.of(balloon).stream())
        .flatMap(
            tail ->
                around.others(balloon, tail.region().bounds(), 0).stream()
                    .filter(other -> !other.isUnboxedEffect())
                    .flatMap(other -> crossing(balloon, tail, other, around).stream()))
        .filter(crossing -> crossing.px() > limitPx + Neighbourhood.HAIR_PX);
  }

  private static Optional<Crossing> crossing(
      PlacedBalloon balloon, VisibleTail tail, PlacedBalloon other, Neighbourhood around) {
    Region overBody = tail.region().intersection(other.body());
    if (Neighbourhood.isSeen(overBody)) {
      return Optional.of(new Crossing(balloon, other, false, overBody, along(tail, overBody)));
    }
    return VisibleTail.of(other)
        .filter(others -> !endTogether(tail, others, around))
        .map(others -> tail.region().intersection(others.region()))
        .filter(Neighbourhood::isSeen)
        .map(shared -> new Crossing(balloon, other, true, shared, along(tail, shared)));
  }

  private static boolean endTogether(VisibleTail one, VisibleTail other, Neighbourhood around) {
    return around.dp(one.tail().tip().distanceTo(other.tail().tip())) < SAME_TIP_DP;
  }

  private static double along(VisibleTail tail, Region shared) {
    return shared.extentPx(tail.tail().root(), tail.tail().tip());
  }

  private Finding finding(Crossing crossing, double limitPx) {
    String message =
        "The tail of "
            + Fault.name(crossing.balloon().set())
            + " runs "
            + Neighbourhood.upPx(crossing.px())
            + " px across "
            + (crossing.overTail() ? "the tail of " : "")
            + Fault.name(crossing.other().set())
            + ".";
    String advice = "End it elsewhere, or let the two balloons change places.";
    return Fault.in(
            List.of(crossing.balloon().set(), crossing.other().set()), this, message, advice)
        .measured(crossing.px(), limitPx, "px")
        .at(crossing.shared().bounds());
  }
}
