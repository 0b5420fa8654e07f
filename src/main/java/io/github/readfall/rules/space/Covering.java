package io.github.readfall.rules.space;

import io.github.readfall.base.geom.Region;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.KeepClear;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.stream.Stream;

/**
 * An area to be kept clear and the part of it that a balloon covers, tail included.
 *
 * @param percent the covered share of the area
 */
record Covering(PlacedBalloon balloon, KeepClear area, Region covered, double percent) {

  /** The areas of a strip that a balloon covers; the balloon need not be on the strip. */
  static Stream<Covering> of(PlacedBalloon balloon, CheckedStrip strip) {
    double limit = strip.limit(RuleSpec.COVERS_ART);
    return strip.keepClear().near(balloon.reach()).stream()
        .filter(area -> area.box().width() > 0 && area.box().height() > 0)
        .map(area -> of(balloon, area))
        .filter(covering -> CheckedStrip.isSeen(covering.covered()) && covering.percent() > limit);
  }

  private static Covering of(PlacedBalloon balloon, KeepClear area) {
    Region ground = Region.of(area.box());
    Region body = balloon.body().intersection(ground);
    Region covered =
        balloon.tailBody().map(tail -> body.union(tail.intersection(ground))).orElse(body);
    return new Covering(balloon, area, covered, 100 * covered.areaPx2() / ground.areaPx2());
  }
}
