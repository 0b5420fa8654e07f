package io.github.readfall.rules;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Fix;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.geom.XY;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.type.balloon.Tail;
import java.util.stream.Stream;

/** A tail so long that the eye follows it like a line of the drawing. */
final class LongTail implements Rule {

  private static final String ID = "flow/tail-long";

  /** An eighth of the height of a small phone's screen. House default, no source. */
  private static final double LIMIT_DP = 80;

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Severity severity() {
    return Severity.WARNING;
  }

  /** The greatest length of a tail, in strip pixels. */
  static double limitPx(Neighbourhood around) {
    return around.limitPx(ID, LIMIT_DP);
  }

  @Override
  public Stream<Finding> check(Galley galley) {
    Neighbourhood around = Neighbourhood.of(galley);
    double limitPx = limitPx(around);
    return galley.balloons().stream()
        .flatMap(
            balloon ->
                balloon.tail().stream()
                    .filter(tail -> isLongInAll(tail, limitPx))
                    .flatMap(tail -> VisibleTail.of(balloon).stream())
                    .filter(tail -> tail.lengthPx() > limitPx + Neighbourhood.HAIR_PX)
                    .map(tail -> finding(balloon, tail, around)));
  }

  /** Whether it would be too long if all of it were seen. */
  private static boolean isLongInAll(Tail tail, double limitPx) {
    return tail.root().distanceTo(tail.tip()) > limitPx;
  }

  private Finding finding(PlacedBalloon balloon, VisibleTail tail, Neighbourhood around) {
    double limitPx = limitPx(around);
    double dp = around.dp(tail.lengthPx());
    String message =
        "The tail of "
            + Fault.name(balloon.set())
            + " is "
            + NumberWords.up(dp, 0)
            + " dp long, more than "
            + NumberWords.down(around.dp(limitPx), 0)
            + ".";
    String advice =
        "Move the balloon nearer to who speaks, or let the tail end sooner: it need only point.";
    XY tip = tail.exit().towards(tail.tail().tip(), Math.max(0, limitPx - 1) / tail.lengthPx());
    return Fault.in(balloon.set(), this, message, advice)
        .measured(dp, around.dp(limitPx), "dp")
        .at(tail.region().bounds())
        .withFix(new Fix.TailTo(balloon.id(), tip));
  }
}
