package io.github.readfall.rules.space;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Fix;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.Deliberate;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.Comparator;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A balloon or its tail that leaves the strip and is not seen there. */
final class OutsideStrip implements Rule {

  @Override
  public RuleSpec spec() {
    return RuleSpec.OUTSIDE;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    double limitPx = RuleSpec.OUTSIDE.limitIn(galley.style());
    return galley.balloons().stream()
        .filter(balloon -> !Deliberate.runsOff(balloon))
        .filter(balloon -> outsidePx(balloon, galley) > limitPx + CheckedStrip.HAIR_PX)
        .map(balloon -> finding(balloon, limitPx, strip));
  }

  /**
   * The distance by which a balloon or its tail leaves the strip; 0 for what rounding does to a
   * flush edge.
   */
  private static double outsidePx(PlacedBalloon balloon, Galley galley) {
    double bodyPx = outsidePx(balloon.body().bounds(), galley.extent());
    double tailPx =
        balloon.tailBody().map(tail -> outsidePx(tail.bounds(), galley.extent())).orElse(0.0);
    return Math.max(Deliberate.isDocked(balloon, bodyPx) ? 0 : bodyPx, tailPx);
  }

  private static double outsidePx(Box box, Box strip) {
    double across = Math.max(strip.x() - box.x(), box.right() - strip.right());
    double down = Math.max(strip.y() - box.y(), box.bottom() - strip.bottom());
    return Math.max(0, Math.max(across, down));
  }

  private Finding finding(PlacedBalloon balloon, double limitPx, CheckedStrip strip) {
    Galley galley = strip.galley();
    double px = outsidePx(balloon, galley);
    boolean tailAlone = outsidePx(balloon.body().bounds(), galley.extent()) <= limitPx;
    String message =
        (tailAlone ? "The tail of " : "")
            + BalloonFinding.name(balloon.set())
            + " is "
            + NumberText.upPx(px)
            + " px outside the strip.";
    Phrase advice =
        tailAlone
            ? Phrase.of("End the tail inside the strip.")
            : Phrase.of("Move the balloon in").then(Deliberate.ALLOWED);
    Finding finding =
        BalloonFinding.of(balloon.set(), RuleSpec.OUTSIDE, Phrase.of(message), advice)
            .measured(px, limitPx, RuleSpec.OUTSIDE.unit())
            .at(balloon.reach());
    return tailAlone
        ? finding.withFix(inside(balloon, px, galley))
        : FixFinder.withFix(finding, balloon, shifts(balloon, galley), strip);
  }

  /** The tip farthest out taken so far inside that the bow of the tail is, too. */
  private static Fix inside(PlacedBalloon balloon, double outsidePx, Galley galley) {
    Box strip = galley.extent();
    int tail = farthestOut(balloon, strip);
    XY tip = balloon.tails().get(tail).tip();
    double tipPx = outsidePx(new Box(tip.x(), tip.y(), 0, 0), strip);
    double insetPx = 1 + Math.max(0, outsidePx - tipPx);
    XY inside =
        new XY(
            Math.max(Math.min(tip.x(), strip.right() - insetPx), insetPx),
            Math.max(Math.min(tip.y(), strip.bottom() - insetPx), insetPx));
    return new Fix.TailTo(balloon.id(), tail, inside);
  }

  private static int farthestOut(PlacedBalloon balloon, Box strip) {
    return IntStream.range(0, balloon.tails().size())
        .boxed()
        .max(
            Comparator.comparingDouble(i -> outsidePx(balloon.tailBodies().get(i).bounds(), strip)))
        .orElseThrow();
  }

  /** Into the strip, and out of its margin at the sides. */
  private static Stream<XY> shifts(PlacedBalloon balloon, Galley galley) {
    double marginPx = FreeRoom.marginPx(galley);
    Box body = balloon.box();
    Box strip = galley.extent();
    double dx = inwards(body.x(), body.right(), marginPx, strip.right() - marginPx);
    double dy = inwards(body.y(), body.bottom(), 0, strip.bottom());
    return Stream.of(new XY(dx, dy));
  }

  private static double inwards(double from, double to, double least, double most) {
    return from < least ? least - from : Math.min(0, most - to);
  }
}
