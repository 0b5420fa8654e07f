package io.github.readfall.rules;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Region;
import io.github.readfall.base.geom.XY;
import io.github.readfall.strip.KeepClear;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.stream.Stream;

/** A balloon, its tail or a sound effect over a part of the picture that must be seen. */
final class CoveredArt implements Rule {

  private static final String ID = "space/covers-art";

  /** What a balloon covers of an area. */
  record Covering(PlacedBalloon balloon, KeepClear area, Region covered, double percent) {}

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Severity severity() {
    return Severity.ERROR;
  }

  @Override
  public Stream<Finding> check(Galley galley) {
    Neighbourhood around = Neighbourhood.of(galley);
    return galley.balloons().stream()
        .flatMap(balloon -> coverings(balloon, around))
        .map(covering -> finding(covering, around));
  }

  /** What a balloon covers, wherever it is. */
  static Stream<Covering> coverings(PlacedBalloon balloon, Neighbourhood around) {
    double limit = around.galley().style().limit(ID, 0);
    return around.keepClear().near(balloon.reach()).stream()
        .filter(area -> area.box().width() > 0 && area.box().height() > 0)
        .map(area -> covering(balloon, area))
        .filter(covering -> Neighbourhood.isSeen(covering.covered()) && covering.percent() > limit);
  }

  private static Covering covering(PlacedBalloon balloon, KeepClear area) {
    Region ground = Region.of(area.box());
    Region body = balloon.body().intersection(ground);
    Region covered =
        balloon.tailBody().map(tail -> body.union(tail.intersection(ground))).orElse(body);
    return new Covering(balloon, area, covered, 100 * covered.areaPx2() / ground.areaPx2());
  }

  private Finding finding(Covering covering, Neighbourhood around) {
    double limit = around.galley().style().limit(ID, 0);
    String what = covering.area().what().isBlank() ? "an area" : covering.area().what().strip();
    String message =
        Fault.name(covering.balloon().set())
            + " covers "
            + NumberWords.up(covering.percent(), 1)
            + " % of what is to be kept clear: "
            + what
            + ".";
    Finding finding =
        Fault.in(covering.balloon().set(), this, message, "Move it off, or shorten its tail.")
            .measured(covering.percent(), limit, "%")
            .at(covering.covered().bounds());
    PlacedBalloon balloon = covering.balloon();
    return VisibleTail.of(balloon)
        .filter(tail -> !balloon.body().meets(Region.of(covering.area().box())))
        .map(tail -> FreePlace.pointing(finding, balloon, shorter(tail), around))
        .orElseGet(() -> FreePlace.mended(finding, balloon, shifts(covering), around));
  }

  /** Tips ever nearer to the balloon, as long as a tail is left to point. */
  private static Stream<XY> shorter(VisibleTail tail) {
    return Stream.of(0.85, 0.7, 0.55, 0.4, 0.25)
        .map(way -> tail.exit().towards(tail.tail().tip(), way));
  }

  /** Straight off the area, each way. */
  private static Stream<XY> shifts(Covering covering) {
    Box area = covering.area().box().grownBy(FreePlace.SLACK_PX);
    Box body = covering.balloon().body().bounds();
    return Stream.of(
        new XY(area.right() - body.x(), 0),
        new XY(area.x() - body.right(), 0),
        new XY(0, area.bottom() - body.y()),
        new XY(0, area.y() - body.bottom()));
  }
}
