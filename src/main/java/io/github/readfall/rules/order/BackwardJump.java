package io.github.readfall.rules.order;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.base.viewing.Phone;
import io.github.readfall.plan.order.ReadingOrder;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A step from one balloon to the next that takes the eye far back up the strip. */
final class BackwardJump implements Rule {

  @Override
  public RuleSpec spec() {
    return RuleSpec.JUMP;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    ReadingOrder order = strip.order();
    double limit = RuleSpec.JUMP.limitIn(galley.style());
    return IntStream.range(1, galley.balloons().size())
        .filter(next -> NumberText.isShort(limit, screens(next, galley)))
        .filter(next -> order.isCompared(next - 1, next))
        .mapToObj(next -> finding(next, limit, galley));
  }

  private static double climbPx(int next, Galley galley) {
    List<PlacedBalloon> balloons = galley.balloons();
    return balloons.get(next - 1).box().centre().y() - balloons.get(next).box().centre().y();
  }

  private static double screens(int next, Galley galley) {
    Phone phone = galley.set().phone();
    return phone.dp(climbPx(next, galley), galley.widthPx()) / phone.heightDp();
  }

  private Finding finding(int next, double limit, Galley galley) {
    PlacedBalloon from = galley.balloons().get(next - 1);
    PlacedBalloon to = galley.balloons().get(next);
    String message =
        "From "
            + BalloonFinding.name(from.set())
            + " to "
            + BalloonFinding.name(to.set())
            + " the eye has to climb back "
            + NumberText.up(climbPx(next, galley), 0)
            + " px, "
            + NumberText.up(screens(next, galley), 2)
            + " of a phone's screen.";
    Phrase advice =
        Phrase.of("Move ").balloon(to.id()).then(" down, or ").balloon(from.id()).then(" up.");
    return BalloonFinding.of(
            List.of(from.set(), to.set()), RuleSpec.JUMP, Phrase.of(message), advice)
        .measured(screens(next, galley), limit, RuleSpec.JUMP.unit())
        .at(from.box().union(to.box()));
  }
}
