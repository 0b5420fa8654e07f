package io.github.readfall.rules.space;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Region;
import io.github.readfall.base.geom.XY;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.stream.Stream;

/** A balloon, its tail or a sound effect over a part of the picture that must be seen. */
final class CoveredArt implements Rule {

  @Override
  public RuleSpec spec() {
    return RuleSpec.COVERS_ART;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    return galley.balloons().stream()
        .flatMap(balloon -> Covering.of(balloon, strip))
        .map(covering -> finding(covering, strip));
  }

  private Finding finding(Covering covering, CheckedStrip strip) {
    double limit = RuleSpec.COVERS_ART.limitIn(strip.galley().style());
    String what = covering.area().what().isBlank() ? "an area" : covering.area().what().strip();
    String message =
        BalloonFinding.name(covering.balloon().set())
            + " covers "
            + NumberText.up(covering.percent(), 1)
            + " % of what is to be kept clear: "
            + what
            + ".";
    Finding finding =
        BalloonFinding.of(
                covering.balloon().set(),
                RuleSpec.COVERS_ART,
                message,
                "Move it off, or shorten its tail.")
            .measured(covering.percent(), limit, RuleSpec.COVERS_ART.unit())
            .at(covering.covered().bounds());
    PlacedBalloon balloon = covering.balloon();
    return VisibleTail.of(balloon)
        .filter(tail -> !balloon.body().meets(Region.of(covering.area().box())))
        .filter(tail -> tail.region().meets(Region.of(covering.area().box())))
        .findFirst()
        .map(tail -> FixFinder.pointing(finding, balloon, tail.number(), shorter(tail), strip))
        .orElseGet(() -> FixFinder.withFix(finding, balloon, shifts(covering), strip));
  }

  /** Tips ever nearer to the balloon, as long as a tail is left to point. */
  private static Stream<XY> shorter(VisibleTail tail) {
    return Stream.of(0.85, 0.7, 0.55, 0.4, 0.25)
        .map(way -> tail.exit().towards(tail.tail().tip(), way));
  }

  /** Straight off the area, each way. */
  private static Stream<XY> shifts(Covering covering) {
    Box area = covering.area().box().grownBy(FixFinder.SLACK_PX);
    Box body = covering.balloon().body().bounds();
    return Stream.of(
        new XY(area.right() - body.x(), 0),
        new XY(area.x() - body.right(), 0),
        new XY(0, area.bottom() - body.y()),
        new XY(0, area.y() - body.bottom()));
  }
}
