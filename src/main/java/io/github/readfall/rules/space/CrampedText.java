package io.github.readfall.rules.space;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.lettering.typeset.GivenFit;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.stream.Stream;

/**
 * Text that is inside the outline that a layout gives it, but nearer to it than its margin. The
 * margin is the series' own; that it is kept is common practice.
 */
final class CrampedText implements Rule {

  @Override
  public RuleSpec spec() {
    return RuleSpec.TIGHT;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    return galley.balloons().stream()
        .flatMap(
            balloon ->
                balloon.set().given().stream()
                    .filter(given -> !given.fits() && given.clearPx() >= 0)
                    .map(given -> finding(balloon, given, galley)));
  }

  private Finding finding(PlacedBalloon balloon, GivenFit given, Galley galley) {
    double marginPx = balloon.set().marginPx();
    String message =
        "The text of "
            + BalloonFinding.name(balloon.set())
            + " comes within "
            + NumberText.down(given.clearPx(), 1)
            + " px of its outline, nearer than its margin of "
            + NumberText.up(marginPx, 1)
            + " px.";
    String advice =
        NaturalSize.cut(balloon, given) + "make the balloon " + NaturalSize.grown(given) + ".";
    return NaturalSize.withFix(
            balloon,
            given,
            galley,
            BalloonFinding.of(balloon.set(), RuleSpec.TIGHT, message, advice))
        .measured(given.clearPx(), marginPx, RuleSpec.TIGHT.unit());
  }
}
