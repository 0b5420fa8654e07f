package io.github.readfall.rules.space;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.galley.Galley;
import java.util.List;
import java.util.stream.Stream;

/** A tail that runs across another balloon or another tail, so that the speaker is unclear. */
final class CrossingTail implements Rule {

  @Override
  public RuleSpec spec() {
    return RuleSpec.TAIL_CROSSES;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    double limitPx = RuleSpec.TAIL_CROSSES.limitIn(galley.style());
    return galley.balloons().stream()
        .flatMap(balloon -> Crossing.of(balloon, strip))
        .filter(one -> !one.overTail() || strip.isBefore(one.balloon(), one.other()))
        .map(crossing -> finding(crossing, limitPx));
  }

  private Finding finding(Crossing crossing, double limitPx) {
    String message =
        "The tail of "
            + BalloonFinding.name(crossing.balloon().set())
            + " runs "
            + NumberText.upPx(crossing.px())
            + " px across "
            + (crossing.overTail() ? "the tail of " : "")
            + BalloonFinding.name(crossing.other().set())
            + ".";
    String advice = "End it elsewhere, or let the two balloons change places.";
    return BalloonFinding.of(
            List.of(crossing.balloon().set(), crossing.other().set()),
            RuleSpec.TAIL_CROSSES,
            message,
            advice)
        .measured(crossing.px(), limitPx, RuleSpec.TAIL_CROSSES.unit())
        .at(crossing.shared().bounds());
  }
}
