package io.github.readfall.rules.space;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Fix;
import io.github.readfall.base.geom.XY;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.type.balloon.Tail;
import java.util.stream.Stream;

/** A tail so long that the eye follows it like a line of the drawing. */
final class LongTail implements Rule {

  @Override
  public RuleSpec spec() {
    return RuleSpec.TAIL_LONG;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    double limitPx = strip.limitPx(RuleSpec.TAIL_LONG);
    return galley.balloons().stream()
        .flatMap(
            balloon ->
                Stream.of(balloon)
                    .filter(b -> b.tails().stream().anyMatch(tail -> isLongInAll(tail, limitPx)))
                    .flatMap(VisibleTail::of)
                    .filter(tail -> tail.lengthPx() > limitPx + CheckedStrip.HAIR_PX)
                    .map(tail -> finding(balloon, tail, strip)));
  }

  /** Returns true if it would be too long if all of it were seen. */
  private static boolean isLongInAll(Tail tail, double limitPx) {
    return tail.root().distanceTo(tail.tip()) > limitPx;
  }

  private Finding finding(PlacedBalloon balloon, VisibleTail tail, CheckedStrip strip) {
    double limitPx = strip.limitPx(RuleSpec.TAIL_LONG);
    double dp = strip.dp(tail.lengthPx());
    String message =
        "The tail of "
            + BalloonFinding.name(balloon.set())
            + " is "
            + NumberText.up(dp, 0)
            + " dp long, more than "
            + NumberText.down(strip.dp(limitPx), 0)
            + ".";
    String advice =
        "Move the balloon nearer to who speaks, or let the tail end sooner: it need only point.";
    XY tip = tail.exit().towards(tail.tail().tip(), Math.max(0, limitPx - 1) / tail.lengthPx());
    return BalloonFinding.of(balloon.set(), RuleSpec.TAIL_LONG, message, advice)
        .measured(dp, strip.dp(limitPx), RuleSpec.TAIL_LONG.unit())
        .at(tail.region().bounds())
        .withFix(new Fix.TailTo(balloon.id(), tail.number(), tip));
  }
}
