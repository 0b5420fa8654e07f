package io.github.readfall.rules.space;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.Deliberate;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A balloon so near to the side of the strip that a thumb, a rounded screen or a frame hides it.
 */
final class MarginIntrusion implements Rule {

  /** The distance of a balloon from one side of the strip. */
  private record Nearness(PlacedBalloon balloon, double px, boolean leftSide) {}

  @Override
  public RuleSpec spec() {
    return RuleSpec.MARGIN;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    return galley.balloons().stream()
        .filter(balloon -> !Deliberate.runsOff(balloon))
        .flatMap(balloon -> nearest(balloon, galley))
        .map(nearness -> finding(nearness, strip));
  }

  /**
   * The side that a balloon is too near to, the nearer one of two; one that leaves the strip is
   * outside.
   */
  private static Stream<Nearness> nearest(PlacedBalloon balloon, Galley galley) {
    Box body = balloon.body().bounds();
    double rightPx = galley.widthPx() - body.right();
    boolean leftSide = body.x() <= rightPx;
    double px = leftSide ? body.x() : rightPx;
    boolean tooNear = px < FreeRoom.marginPx(galley) - CheckedStrip.HAIR_PX;
    boolean deliberate =
        Deliberate.isDocked(balloon, px)
            || Deliberate.isDocked(balloon, fromItsPanelPx(balloon, leftSide, galley));
    return px > -CheckedStrip.HAIR_PX && tooNear && !deliberate
        ? Stream.of(new Nearness(balloon, Math.max(0, px), leftSide))
        : Stream.empty();
  }

  private static double fromItsPanelPx(PlacedBalloon balloon, boolean leftSide, Galley galley) {
    Box body = balloon.body().bounds();
    Optional<Box> panel = galley.panel(balloon.panel()).map(PanelBox::box);
    return panel
        .map(box -> leftSide ? body.x() - box.x() : box.right() - body.right())
        .orElse(Double.POSITIVE_INFINITY);
  }

  private Finding finding(Nearness nearness, CheckedStrip strip) {
    double limitPx = FreeRoom.marginPx(strip.galley());
    double shiftPx = limitPx - nearness.px();
    String message =
        BalloonFinding.name(nearness.balloon().set())
            + " is "
            + NumberText.downPx(nearness.px())
            + " px from the "
            + (nearness.leftSide() ? "left" : "right")
            + " edge of the strip, less than "
            + NumberText.up(limitPx, 0)
            + ".";
    Phrase advice =
        Phrase.of("Move it " + NumberText.upPx(shiftPx) + " px to the ")
            .then(nearness.leftSide() ? "right" : "left")
            .then(Deliberate.ALLOWED);
    Finding finding =
        BalloonFinding.of(nearness.balloon().set(), RuleSpec.MARGIN, Phrase.of(message), advice)
            .measured(nearness.px(), limitPx, RuleSpec.MARGIN.unit())
            .at(nearness.balloon().box());
    double dx = nearness.leftSide() ? shiftPx : -shiftPx;
    return FixFinder.withFix(finding, nearness.balloon(), Stream.of(new XY(dx, 0)), strip);
  }
}
