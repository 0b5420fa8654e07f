package io.github.readfall.rules.space;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.XY;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.script.CueKind;
import io.github.readfall.strip.Mouth;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.type.balloon.Tail;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A tail that does not point at its speaker's mouth, or no tail at all, if the mouth is known.
 * Common practice: a tail points at the mouth and ends 50 to 60 % of the way there (N. Piekos,
 * "Comic Book Grammar and Tradition").
 */
final class AstrayTail implements Rule {

  /**
   * Shares of the way from the outline to the mouth: the middle of what Piekos asks for, then
   * shorter ones, for when a longer tail would cover a face.
   */
  private static final List<Double> WAYS = List.of(0.55, 0.5, 0.4, 0.3, 0.2);

  /**
   * A tail and the mouth that it is for.
   *
   * @param tail the speaker's place among those of the balloon, from 0, which is the tail's
   */
  private record Aim(PlacedBalloon balloon, int tail, Mouth mouth) {}

  /** A tip so little past the mouth is at the mouth. House default, no source. */
  private static final double AT_THE_MOUTH_PX = 1;

  @Override
  public RuleSpec spec() {
    return RuleSpec.TAIL_ASTRAY;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    Set<String> pointing =
        galley.balloons().stream()
            .filter(balloon -> !balloon.tails().isEmpty())
            .map(strip::chain)
            .collect(Collectors.toSet());
    return galley.balloons().stream()
        .filter(AstrayTail::isSpoken)
        .flatMap(
            balloon ->
                IntStream.range(0, balloon.cue().speakers().size())
                    .boxed()
                    .flatMap(speaker -> check(balloon, speaker, pointing, strip)));
  }

  /** Returns true if its speaker is in the picture. */
  private static boolean isSpoken(PlacedBalloon balloon) {
    return balloon.cue().kind() == CueKind.DIALOGUE
        && balloon.set().look().shape().hasTail()
        && !balloon.mayLeadIn();
  }

  private Stream<Finding> check(
      PlacedBalloon balloon, int speaker, Set<String> pointing, CheckedStrip strip) {
    Optional<Mouth> known =
        strip.galley().mouth(balloon.panel(), balloon.cue().speakers().get(speaker));
    boolean partner = balloon.tails().isEmpty() && pointing.contains(strip.chain(balloon));
    if (known.isEmpty() || partner) {
      return Stream.empty();
    }
    Aim aim = new Aim(balloon, speaker, known.get());
    return speaker < balloon.tails().size()
        ? check(aim, strip)
        : Stream.of(withoutTail(aim, strip));
  }

  private Stream<Finding> check(Aim aim, CheckedStrip strip) {
    Tail tail = aim.balloon().tails().get(aim.tail());
    Mouth mouth = aim.mouth();
    double limitDeg = RuleSpec.TAIL_ASTRAY.limitIn(strip.galley().style());
    double offDeg = degreesBetween(tail.root(), tail.tip(), mouth.at());
    if (offDeg > limitDeg * (1 + 1e-9)) {
      return Stream.of(pointingElsewhere(aim, offDeg, limitDeg, strip));
    }
    double beyondPx = tail.root().distanceTo(tail.tip()) - tail.root().distanceTo(mouth.at());
    return beyondPx > AT_THE_MOUTH_PX ? Stream.of(beyond(aim, beyondPx, strip)) : Stream.empty();
  }

  /** The angle at which two points are seen from a third, 0 to 180 degrees. */
  private static double degreesBetween(XY from, XY one, XY other) {
    double ax = one.x() - from.x();
    double ay = one.y() - from.y();
    double bx = other.x() - from.x();
    double by = other.y() - from.y();
    return Math.toDegrees(StrictMath.atan2(Math.abs(ax * by - ay * bx), ax * bx + ay * by));
  }

  private Finding pointingElsewhere(Aim aim, double offDeg, double limitDeg, CheckedStrip strip) {
    String message =
        "The tail of "
            + BalloonFinding.name(aim.balloon().set())
            + " points "
            + NumberText.up(offDeg - 0.01, 1)
            + " degrees past the mouth of "
            + aim.mouth().speaker()
            + ", more than "
            + NumberText.down(limitDeg, 0)
            + ".";
    return withFix(
        finding(aim.balloon(), message).measured(offDeg, limitDeg, RuleSpec.TAIL_ASTRAY.unit()),
        aim,
        strip);
  }

  private Finding beyond(Aim aim, double beyondPx, CheckedStrip strip) {
    String message =
        "The tail of "
            + BalloonFinding.name(aim.balloon().set())
            + " ends "
            + NumberText.upPx(beyondPx)
            + " px beyond the mouth of "
            + aim.mouth().speaker()
            + ".";
    return withFix(finding(aim.balloon(), message).measured(beyondPx, 0, "px"), aim, strip);
  }

  private Finding withoutTail(Aim aim, CheckedStrip strip) {
    String message =
        BalloonFinding.name(aim.balloon().set())
            + " has no tail to the mouth of "
            + aim.mouth().speaker()
            + ", which is known.";
    return withFix(finding(aim.balloon(), message), aim, strip);
  }

  private Finding finding(PlacedBalloon balloon, String message) {
    String advice = "Point the tail at the mouth and end it about half of the way there.";
    return BalloonFinding.of(balloon.set(), RuleSpec.TAIL_ASTRAY, message, advice)
        .at(balloon.tailBody().map(tail -> tail.bounds()).orElse(balloon.box()));
  }

  /**
   * The finding with the right tail as its fix; no tail helps if the mouth is under the balloon.
   */
  private static Finding withFix(Finding finding, Aim aim, CheckedStrip strip) {
    PlacedBalloon balloon = aim.balloon();
    Mouth mouth = aim.mouth();
    XY middle = balloon.set().inner().movedBy(balloon.at().x(), balloon.at().y()).centre();
    double freePx = VisibleTail.lengthPx(middle, mouth.at(), balloon.body());
    if (freePx < 1) {
      return finding;
    }
    XY exit = mouth.at().towards(middle, freePx / middle.distanceTo(mouth.at()));
    double most = Math.max(0, strip.limitPx(RuleSpec.TAIL_LONG) - 1) / freePx;
    Stream<XY> tips = WAYS.stream().map(way -> exit.towards(mouth.at(), Math.min(way, most)));
    return FixFinder.pointing(finding, balloon, aim.tail(), tips, strip);
  }
}
