package io.github.readfall.rules.space;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import java.util.stream.Stream;

/** Two balloons with too little room between them to be taken in one after the other. */
final class CrowdedBalloons implements Rule {

  @Override
  public RuleSpec spec() {
    return RuleSpec.CROWDED;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    double limitPx = strip.limitPx(RuleSpec.CROWDED);
    return BalloonGap.of(strip, BalloonGap.Judge.CROWDED).map(gap -> finding(gap, limitPx, strip));
  }

  private Finding finding(BalloonGap gap, double limitPx, CheckedStrip strip) {
    double gapDp = strip.dp(gap.px());
    double limitDp = strip.dp(limitPx);
    String message =
        "Between "
            + BalloonFinding.name(gap.first().set())
            + " and "
            + BalloonFinding.name(gap.second().set())
            + " there are "
            + NumberText.down(gapDp, 1)
            + " dp, less than "
            + NumberText.up(limitDp, 1)
            + ".";
    String advice =
        "Move them "
            + NumberText.upPx(limitPx - gap.px())
            + " px further apart, or join them if one speaker goes on.";
    Finding finding =
        BalloonFinding.of(
                gap.both().stream().map(balloon -> balloon.set()).toList(),
                RuleSpec.CROWDED,
                message,
                advice)
            .measured(gapDp, limitDp, RuleSpec.CROWDED.unit())
            .at(gap.box());
    return FixFinder.withFix(finding, gap, limitPx, strip);
  }
}
