package io.github.readfall.rules.space;

import io.github.readfall.base.geom.Region;
import io.github.readfall.base.geom.XY;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.type.balloon.Tail;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The visible part of a tail: from where it leaves its own balloon to its tip.
 *
 * @param number among the tails of its balloon, from 0
 * @param tail all of it
 * @param region area of the visible part
 * @param lengthPx from the outline straight to the tip
 */
record VisibleTail(int number, Tail tail, Region region, double lengthPx) {

  /** The tails of a balloon, in the order of its speakers. */
  static Stream<VisibleTail> of(PlacedBalloon balloon) {
    return IntStream.range(0, balloon.tails().size()).mapToObj(i -> of(balloon, i));
  }

  private static VisibleTail of(PlacedBalloon balloon, int number) {
    Tail tail = balloon.tails().get(number);
    Region seen = balloon.tailBodies().get(number).minus(balloon.body());
    return new VisibleTail(number, tail, seen, lengthPx(tail.root(), tail.tip(), balloon.body()));
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
