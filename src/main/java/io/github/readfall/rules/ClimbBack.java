package io.github.readfall.rules;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.viewing.Phone;
import io.github.readfall.plan.order.ReadingOrder;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** From one balloon to the next the eye has to climb far back up the strip. */
final class ClimbBack implements Rule {

  /** In phone screens. House default, no source: what a glance spans without scrolling back. */
  private static final double LIMIT = 0.25;

  @Override
  public String id() {
    return "flow/jump";
  }

  @Override
  public Severity severity() {
    return Severity.WARNING;
  }

  @Override
  public Stream<Finding> check(Galley galley) {
    ReadingOrder order = ReadingOrder.of(galley);
    double limit = galley.style().limit(id(), LIMIT);
    return IntStream.range(1, galley.balloons().size())
        .filter(next -> NumberWords.isShort(limit, screens(next, galley)))
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
            + Fault.name(from.set())
            + " to "
            + Fault.name(to.set())
            + " the eye has to climb back "
            + NumberWords.up(climbPx(next, galley), 0)
            + " px, "
            + NumberWords.up(screens(next, galley), 2)
            + " of a phone's screen.";
    String advice = "Move " + to.id() + " down, or " + from.id() + " up.";
    return Fault.in(List.of(from.set(), to.set()), this, message, advice)
        .measured(screens(next, galley), limit, "screens")
        .at(from.box().union(to.box()));
  }
}
