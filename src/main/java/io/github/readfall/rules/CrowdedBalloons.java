package io.github.readfall.rules;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.strip.galley.Galley;
import java.util.stream.Stream;

/** Two balloons with too little room between them to be taken in one after the other. */
final class CrowdedBalloons implements Rule {

  static final String ID = "space/crowded";

  /** House default, no source: some two thirds of the margin round the letters on either side. */
  static final double LIMIT_DP = 6;

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Severity severity() {
    return Severity.WARNING;
  }

  @Override
  public Stream<Finding> check(Galley galley) {
    Neighbourhood around = Neighbourhood.of(galley);
    double limitPx = around.limitPx(ID, LIMIT_DP);
    return BalloonGap.of(around, BalloonGap.Judge.CROWDED)
        .map(gap -> finding(gap, limitPx, around));
  }

  private Finding finding(BalloonGap gap, double limitPx, Neighbourhood around) {
    double gapDp = around.dp(gap.px());
    double limitDp = around.dp(limitPx);
    String message =
        "Between "
            + Fault.name(gap.first().set())
            + " and "
            + Fault.name(gap.second().set())
            + " there are "
            + NumberWords.down(gapDp, 1)
            + " dp, less than "
            + NumberWords.up(limitDp, 1)
            + ".";
    String advice =
        "Move them "
            + Neighbourhood.upPx(limitPx - gap.px())
            + " px further apart, or join them if one speaker goes on.";
    Finding finding =
        Fault.in(gap.both().stream().map(balloon -> balloon.set()).toList(), this, message, advice)
            .measured(gapDp, limitDp, "dp")
            .at(gap.box());
    return FreePlace.mended(finding, gap, limitPx, around);
  }
}
