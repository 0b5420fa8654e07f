package io.github.readfall.rules.space;

import io.github.readfall.base.geom.Region;
import io.github.readfall.base.geom.XY;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.type.balloon.Tail;
import java.util.Optional;

/**
 * The visible part of a tail: from where it leaves its own balloon to its tip.
 *
 * @param tail all of it
 * @param region area of the visible part
 * @param lengthPx from the outline straight to the tip
 */
record VisibleTail(Tail tail, Region region, double lengthPx) {

  static Optional<VisibleTail> of(PlacedBalloon balloon) {
    return balloon
        .tail()
        .flatMap(tail -> balloon.tailBody().map(all -> of(tail, all, balloon.body())));
  }

  private static VisibleTail of(Tail tail, Region all, Region body) {
    return new VisibleTail(tail, all.minus(body), lengthPx(tail.root(), tail.tip(), body));
  }

  /** The distance from a point under a body to another, without the part under it. */
  static double lengthPx(XY from, XY to, Region body) {
    return Region.line(from, to).minus(body).lengthPx();
  }

  /** The point where it leaves the outline. */
  XY exit() {
    double whole = tail.root().distanceTo(tail.tip());
    return whole > 0 ? tail.tip().towards(tail.root(), lengthPx / whole) : tail.tip();
  }
}
