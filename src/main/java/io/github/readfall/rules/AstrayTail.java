package io.github.readfall.rules;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.geom.XY;
import io.github.readfall.script.CueKind;
import io.github.readfall.strip.Mouth;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.type.balloon.Tail;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A tail that does not point at the mouth of who speaks, or no tail at all, where the mouth is
 * known. Common practice: a tail points at the mouth and ends 50 to 60 % of the way there (N.
 * Piekos, "Comic Book Grammar and Tradition").
 */
final class AstrayTail implements Rule {

  private static final String ID = "flow/tail-astray";

  /** About the width of a hand at arm's length. House default, no source. */
  private static final double LIMIT_DEG = 20;

  /**
   * Shares of the way from the outline to the mouth: the middle of what Piekos asks for, then
   * shorter ones, where a longer tail would cover a face.
   */
  private static final List<Double> WAYS = List.of(0.55, 0.5, 0.4, 0.3, 0.2);

  /** A tip so little past the mouth is at the mouth. House default, no source. */
  private static final double AT_THE_MOUTH_PX = 1;

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Severity severity() {
    return Severity.WARNING;
  }

  @Override
  public Stream<Finding> check(Galley galley) {
    Neighbourhood around = Neighbourhood.of(galley);
    Set<String> pointing =
        galley.balloons().stream()
            .filter(balloon -> balloon.tail().isPresent())
            .map(around::chain)
            .collect(Collectors.toSet());
    return galley.balloons().stream()
        .filter(AstrayTail::isSpoken)
        .flatMap(
            balloon ->
                galley.mouth(balloon.panel(), balloon.cue().speaker()).stream()
                    .flatMap(mouth -> check(balloon, mouth, pointing, around)));
  }

  /** Whether it has somebody in the picture to point at. */
  private static boolean isSpoken(PlacedBalloon balloon) {
    return balloon.cue().kind() == CueKind.DIALOGUE
        && balloon.set().look().shape().hasTail()
        && !balloon.mayLeadIn();
  }

  private Stream<Finding> check(
      PlacedBalloon balloon, Mouth mouth, Set<String> pointing, Neighbourhood around) {
    if (balloon.tail().isPresent()) {
      return check(balloon, balloon.tail().orElseThrow(), mouth, around);
    }
    return pointing.contains(around.chain(balloon))
        ? Stream.empty()
        : Stream.of(withoutTail(balloon, mouth, around));
  }

  private Stream<Finding> check(
      PlacedBalloon balloon, Tail tail, Mouth mouth, Neighbourhood around) {
    double limitDeg = around.galley().style().limit(ID, LIMIT_DEG);
    double offDeg = degreesBetween(tail.root(), tail.tip(), mouth.at());
    if (offDeg > limitDeg * (1 + 1e-9)) {
      return Stream.of(pointingElsewhere(balloon, mouth, offDeg, limitDeg, around));
    }
    double beyondPx = tail.root().distanceTo(tail.tip()) - tail.root().distanceTo(mouth.at());
    return beyondPx > AT_THE_MOUTH_PX
        ? Stream.of(beyond(balloon, mouth, beyondPx, around))
        : Stream.empty();
  }

  /** The angle at which two points are seen from a third, 0 to 180 degrees. */
  private static double degreesBetween(XY from, XY one, XY other) {
    double ax = one.x() - from.x();
    double ay = one.y() - from.y();
    double bx = other.x() - from.x();
    double by = other.y() - from.y();
    return Math.toDegrees(StrictMath.atan2(Math.abs(ax * by - ay * bx), ax * bx + ay * by));
  }

  private Finding pointingElsewhere(
      PlacedBalloon balloon, Mouth mouth, double offDeg, double limitDeg, Neighbourhood around) {
    String message =
        "The tail of "
            + Fault.name(balloon.set())
            + " points "
            + NumberWords.up(offDeg - 0.01, 1)
            + " degrees past the mouth of "
            + mouth.speaker()
            + ", more than "
            + NumberWords.down(limitDeg, 0)
            + ".";
    return mended(
        finding(balloon, message).measured(offDeg, limitDeg, "degrees"), balloon, mouth, around);
  }

  private Finding beyond(
      PlacedBalloon balloon, Mouth mouth, double beyondPx, Neighbourhood around) {
    String message =
        "The tail of "
            + Fault.name(balloon.set())
            + " ends "
            + Neighbourhood.upPx(beyondPx)
            + " px beyond the mouth of "
            + mouth.speaker()
            + ".";
    return mended(finding(balloon, message).measured(beyondPx, 0, "px"), balloon, mouth, around);
  }

  private Finding withoutTail(PlacedBalloon balloon, Mouth mouth, Neighbourhood around) {
    String message =
        Fault.name(balloon.set())
            + " has no tail to the mouth of "
            + mouth.speaker()
            + ", which is known.";
    return mended(finding(balloon, message), balloon, mouth, around);
  }

  private Finding finding(PlacedBalloon balloon, String message) {
    String advice = "Point the tail at the mouth and end it about half of the way there.";
    return Fault.in(balloon.set(), this, message, advice)
        .at(balloon.tailBody().map(tail -> tail.bounds()).orElse(balloon.box()));
  }

  /** With the tail that it should have; no tail helps where the mouth lies under the balloon. */
  private static Finding mended(
      Finding finding, PlacedBalloon balloon, Mouth mouth, Neighbourhood around) {
    XY middle = balloon.set().inner().movedBy(balloon.at().x(), balloon.at().y()).centre();
    double freePx = VisibleTail.lengthPx(middle, mouth.at(), balloon.body());
    if (freePx < 1) {
      return finding;
    }
    XY exit = mouth.at().towards(middle, freePx / middle.distanceTo(mouth.at()));
    double most = Math.max(0, LongTail.limitPx(around) - 1) / freePx;
    Stream<XY> tips = WAYS.stream().map(way -> exit.towards(mouth.at(), Math.min(way, most)));
    return FreePlace.pointing(finding, balloon, tips, around);
  }
}
