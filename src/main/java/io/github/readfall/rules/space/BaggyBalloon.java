package io.github.readfall.rules.space;

import static java.util.stream.Collectors.toSet;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.typeset.GivenFit;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A balloon far larger than its text needs: it hides art and looks as if words were missing. The
 * limit is a house default, no source. Joined balloons are left alone, since one may be drawn large
 * to hold on to the other.
 */
final class BaggyBalloon implements Rule {

  @Override
  public RuleSpec spec() {
    return RuleSpec.SLACK;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    double limit = RuleSpec.SLACK.limitIn(galley.style());
    Set<String> joined =
        galley.balloons().stream()
            .flatMap(
                balloon ->
                    balloon.set().joinedTo().stream().flatMap(to -> Stream.of(to, balloon.id())))
            .collect(toSet());
    return galley.balloons().stream()
        .filter(balloon -> !joined.contains(balloon.id()))
        .flatMap(
            balloon ->
                balloon.set().given().stream()
                    .filter(given -> given.fits() && times(balloon, given) > limit)
                    .map(given -> finding(balloon, given, galley, limit)));
  }

  /** Its area over that of the outline it would have by itself. */
  private static double times(PlacedBalloon balloon, GivenFit given) {
    Box own = given.ownSize();
    Box box = balloon.box();
    return box.width() * box.height() / (own.width() * own.height());
  }

  private Finding finding(PlacedBalloon balloon, GivenFit given, Galley galley, double limit) {
    double times = times(balloon, given);
    String message =
        "The balloon of "
            + BalloonFinding.name(balloon.set())
            + " is "
            + NumberText.up(times, 1)
            + " times as large as its text needs, more than "
            + NumberText.down(limit, 1)
            + ".";
    String advice = "Make it smaller; by itself it would be " + NaturalSize.size(given) + ".";
    return NaturalSize.withFix(
            balloon,
            given,
            galley,
            BalloonFinding.of(balloon.set(), RuleSpec.SLACK, message, advice))
        .measured(times, limit, RuleSpec.SLACK.unit());
  }
}
