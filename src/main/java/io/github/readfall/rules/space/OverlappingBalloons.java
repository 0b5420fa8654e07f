package io.github.readfall.rules.space;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.galley.Galley;
import java.util.stream.Stream;

/** Two balloons that cover each other, or a sound effect over letters. */
final class OverlappingBalloons implements Rule {

  @Override
  public RuleSpec spec() {
    return RuleSpec.OVERLAP;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    double limitPx = RuleSpec.OVERLAP.limitIn(galley.style());
    return BalloonGap.of(strip, BalloonGap.Judge.OVERLAP).map(gap -> finding(gap, limitPx, strip));
  }

  private Finding finding(BalloonGap gap, double limitPx, CheckedStrip strip) {
    String depth = NumberText.upPx(gap.depthPx());
    String message =
        BalloonFinding.name(gap.first().set())
            + " and "
            + BalloonFinding.name(gap.second().set())
            + (isOverLetters(gap) ? " lie over each other's letters by " : " overlap by ")
            + depth
            + " px.";
    String advice = "Move one of them by " + depth + " px or more, or join them.";
    Finding finding =
        BalloonFinding.of(
                gap.both().stream().map(balloon -> balloon.set()).toList(),
                RuleSpec.OVERLAP,
                message,
                advice)
            .measured(gap.depthPx(), limitPx, RuleSpec.OVERLAP.unit())
            .at(gap.box());
    double roomPx = strip.limitPx(RuleSpec.CROWDED);
    return FixFinder.withFix(finding, gap, roomPx, strip);
  }

  private static boolean isOverLetters(BalloonGap gap) {
    return gap.both().stream().anyMatch(balloon -> balloon.isUnboxedEffect());
  }
}
