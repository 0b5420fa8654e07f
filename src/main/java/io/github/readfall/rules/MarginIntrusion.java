package io.github.readfall.rules;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A balloon so near to the side of the strip that a thumb, a rounded screen or a frame hides it.
 */
final class MarginIntrusion implements Rule {

  private static final String ID = "space/margin";

  /** How near a balloon is to one side of the strip. */
  private record Nearness(PlacedBalloon balloon, double px, boolean leftSide) {}

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Severity severity() {
    return Severity.WARNING;
  }

  /** The least distance from either side of the strip. */
  static double limitPx(Galley galley) {
    return galley.style().limit(ID, galley.style().strip().safeMarginPx());
  }

  @Override
  public Stream<Finding> check(Galley galley) {
    Neighbourhood around = Neighbourhood.of(galley);
    return galley.balloons().stream()
        .filter(balloon -> !Deliberate.runsOff(balloon))
        .flatMap(balloon -> nearest(balloon, galley))
        .map(nearness -> finding(nearness, around));
  }

  /** The side that a balloon is too near to, the nearer one of two; what leaves it is outside. */
  private static Stream<Nearness> nearest(PlacedBalloon balloon, Galley galley) {
    Box body = balloon.body().bounds();
    double rightPx = galley.widthPx() - body.right();
    boolean leftSide = body.x() <= rightPx;
    double px = leftSide ? body.x() : rightPx;
    boolean tooNear = px < limitPx(galley) - Neighbourhood.HAIR_PX;
    boolean deliberate =
        Deliberate.isDocked(balloon, px)
            || Deliberate.isDocked(balloon, fromItsPanelPx(balloon, leftSide, galley));
    return px > -Neighbourhood.HAIR_PX && tooNear && !deliberate
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

  private Finding finding(Nearness nearness, Neighbourhood around) {
    double limitPx = limitPx(around.galley());
    double shiftPx = limitPx - nearness.px();
    String message =
        Fault.name(nearness.balloon().set())
            + " is "
            + Neighbourhood.downPx(nearness.px())
            + " px from the "
            + (nearness.leftSide() ? "left" : "right")
            + " edge of the strip, less than "
            + NumberWords.up(limitPx, 0)
            + ".";
    String advice =
        "Move it "
            + Neighbourhood.upPx(shiftPx)
            + " px to the "
            + (nearness.leftSide() ? "right" : "left")
            + ", or mark it bleed in layout.json if it is meant to run off.";
    Finding finding =
        Fault.in(nearness.balloon().set(), this, message, advice)
            .measured(nearness.px(), limitPx, "px")
            .at(nearness.balloon().box());
    double dx = nearness.leftSide() ? shiftPx : -shiftPx;
    return FreePlace.mended(finding, nearness.balloon(), Stream.of(new XY(dx, 0)), around);
  }
}
