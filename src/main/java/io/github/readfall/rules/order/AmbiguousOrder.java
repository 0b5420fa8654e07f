package io.github.readfall.rules.order;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.lettering.style.ReadingSide;
import io.github.readfall.plan.order.Displaced;
import io.github.readfall.plan.order.EyeTolerances;
import io.github.readfall.plan.order.ReadFirst;
import io.github.readfall.plan.order.ReadingOrder;
import io.github.readfall.plan.order.ReadingReason;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Two balloons of which readers would differ on which comes first. */
final class AmbiguousOrder implements Rule {

  @Override
  public RuleSpec spec() {
    return RuleSpec.AMBIGUOUS;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    ReadingOrder order = strip.order();
    double limit = RuleSpec.AMBIGUOUS.limitIn(galley.style());
    return Stream.concat(
        IntStream.range(1, order.stops().size())
            .filter(later -> differs(later, order, galley, limit))
            .mapToObj(later -> neighbours(later, order, galley, limit)),
        order.open().stream().flatMap(open -> circles(open, order, galley, limit)));
  }

  private static boolean differs(int later, ReadingOrder order, Galley galley, double limit) {
    List<PlacedBalloon> balloons = galley.balloons();
    if (balloons.get(later).isJoinedWith(balloons.get(later - 1))) {
      return false;
    }
    ReadFirst meeting = order.meeting(later - 1, later);
    boolean samePanel = balloons.get(later).panel() == balloons.get(later - 1).panel();
    boolean tells = samePanel ? meeting.offset() <= limit : meeting.why() == ReadingReason.COLUMN;
    return meeting.why().readersDiffer() && tells;
  }

  private Finding neighbours(int later, ReadingOrder order, Galley galley, double limit) {
    ReadFirst meeting = order.meeting(later - 1, later);
    Phrase differ =
        Phrase.of("Readers may differ on whether " + names(later - 1, later, galley) + ": ");
    if (meeting.why() == ReadingReason.COLUMN) {
      Phrase message = differ.then("some read down the columns of panels, some across.");
      Phrase advice =
          Phrase.of("Bring the columns nearer to each other, or the rows farther apart.");
      return finding(later - 1, later, message, advice, galley)
          .measured(meeting.offset(), EyeTolerances.COLUMN_GAP, "gaps between the rows");
    }
    int higher = meeting.inOrder() ? later - 1 : later;
    Phrase message = differ.then(reason(meeting, id(higher, galley), order)).then(".");
    Phrase advice = advice(meeting, id(later - 1, galley), id(later, galley), order);
    return finding(later - 1, later, message, advice, galley)
        .measured(meeting.offset(), limit, RuleSpec.AMBIGUOUS.unit());
  }

  private Stream<Finding> circles(Displaced open, ReadingOrder order, Galley galley, double limit) {
    return open.others().stream()
        .filter(later -> isNews(open.index(), later, order, galley))
        .map(later -> circle(open.index(), later, order, galley, limit));
  }

  /**
   * Returns false for what was already said of it as a neighbour, and for what is a matter of
   * panels.
   */
  private static boolean isNews(int earlier, int later, ReadingOrder order, Galley galley) {
    boolean isExplained =
        later == earlier + 1 && order.meeting(earlier, later).why().readersDiffer();
    return !isExplained
        && galley.balloons().get(earlier).panel() == galley.balloons().get(later).panel();
  }

  private Finding circle(int earlier, int later, ReadingOrder order, Galley galley, double limit) {
    Phrase message =
        Phrase.of(
            "Readers may differ on whether "
                + names(earlier, later, galley)
                + ": with what is between them they go in a circle, each read before the next.");
    Phrase advice = Phrase.of("Let one of them begin clearly higher, or all at the same height.");
    return finding(earlier, later, message, advice, galley)
        .measured(order.meeting(earlier, later).offset(), limit, RuleSpec.AMBIGUOUS.unit());
  }

  private Finding finding(int earlier, int later, Phrase message, Phrase advice, Galley galley) {
    PlacedBalloon first = galley.balloons().get(earlier);
    PlacedBalloon second = galley.balloons().get(later);
    return BalloonFinding.of(
            List.of(first.set(), second.set()), RuleSpec.AMBIGUOUS, message, advice)
        .at(first.box().union(second.box()));
  }

  private static String names(int earlier, int later, Galley galley) {
    return BalloonFinding.name(galley.balloons().get(earlier).set())
        + " or "
        + BalloonFinding.name(galley.balloons().get(later).set())
        + " comes first";
  }

  private static Phrase reason(ReadFirst meeting, Phrase higher, ReadingOrder order) {
    boolean fromLeft = order.eye().side() == ReadingSide.LTR;
    return meeting.why() == ReadingReason.HIGHER_BUT_TRAILING
        ? higher.then(
            " begins a little higher, but on the "
                + (fromLeft ? "right" : "left")
                + ", and the strip is read from the "
                + (fromLeft ? "left" : "right"))
        : meeting.why().sentence(higher, order.eye().side());
  }

  private static Phrase advice(
      ReadFirst meeting, Phrase earlier, Phrase later, ReadingOrder order) {
    String side = order.eye().side() == ReadingSide.LTR ? "left" : "right";
    Phrase down = Phrase.of("Move ").then(later).then(" down, ");
    return meeting.why() == ReadingReason.HIGHER_BUT_TRAILING
        ? down.then("or let both begin at the same height with ")
            .then(earlier)
            .then(" on the " + side + ".")
        : down.then("so that ").then(earlier).then(" begins clearly higher.");
  }

  private static Phrase id(int balloon, Galley galley) {
    return Phrase.of("").balloon(galley.balloons().get(balloon).id());
  }
}
