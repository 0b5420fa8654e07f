package io.github.readfall.rules;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.strip.galley.Galley;
import java.util.stream.Stream;

/** Two balloons that cover each other, or a sound effect over letters. */
final class OverlappingBalloons implements Rule {

  static final String ID = "space/overlap";

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
    return BalloonGap.of(around, BalloonGap.Judge.OVERLAP)
        .map(gap -> finding(gap, limitPx, around));
  }

  private Finding finding(BalloonGap gap, double limitPx, Neighbourhood around) {
    String depth = Neighbourhood.upPx(gap.depthPx());
    String message =
        Fault.name(gap.first().set())
            + " and "
            + Fault.name(gap.second().set())
            + (isOverLetters(gap) ? " lie over each other's letters by " : " overlap by ")
            + depth
            + " px.";
    String advice = "Move one of them by " + depth + " px or more, or join them.";
    Finding finding =
        Fault.in(gap.both().stream().map(balloon -> balloon.set()).toList(), this, message, advice)
            .measured(gap.depthPx(), limitPx, "px")
            .at(gap.box());
    double roomPx = around.limitPx(CrowdedBalloons.ID, CrowdedBalloons.LIMIT_DP);
    return FreePlace.mended(finding, gap, roomPx, around);
  }

  private static boolean isOverLetters(BalloonGap gap) {
    return gap.both().stream().anyMatch(balloon -> balloon.isUnboxedEffect());
  }
}
