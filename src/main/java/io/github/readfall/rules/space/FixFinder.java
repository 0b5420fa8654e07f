package io.github.readfall.rules.space;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Fix;
import io.github.readfall.base.geom.XY;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.Deliberate;
import io.github.readfall.strip.galley.Compositor;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.type.balloon.Tail;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds the smallest change to a balloon or its tail that fixes a finding and does no harm. */
final class FixFinder {

  /** A little more than is needed, so that rounding a place takes nothing away. */
  static final double SLACK_PX = 0.5;

  private FixFinder() {}

  /** A balloon with a shift that may help it. */
  private record Attempt(PlacedBalloon balloon, XY shift) {
    double px() {
      return shift.distanceTo(new XY(0, 0));
    }
  }

  /** A finding with the smallest of some shifts of a balloon that does no harm, if one is. */
  static Finding withFix(
      Finding finding, PlacedBalloon balloon, Stream<XY> shifts, CheckedStrip strip) {
    return withFix(finding, shifts.map(shift -> new Attempt(balloon, shift)), strip);
  }

  /** A finding with the smallest shift of either of a pair that leaves them so much room. */
  static Finding withFix(Finding finding, BalloonGap gap, double roomPx, CheckedStrip strip) {
    List<XY> shifts = gap.shifts(roomPx + SLACK_PX);
    Stream<Attempt> tries =
        Stream.concat(
            shifts.stream().map(shift -> new Attempt(gap.second(), shift)),
            shifts.stream().map(shift -> new Attempt(gap.first(), new XY(-shift.x(), -shift.y()))));
    return withFix(finding, tries, strip);
  }

  private static Finding withFix(Finding finding, Stream<Attempt> tries, CheckedStrip strip) {
    Optional<Fix> move =
        tries
            .filter(one -> mayMove(one.balloon(), strip))
            .sorted(Comparator.comparingDouble(Attempt::px))
            .map(one -> moved(one.balloon(), one.shift()))
            .filter(moved -> FreeRoom.isFree(moved, strip))
            .findFirst()
            .map(moved -> new Fix.Move(moved.id(), new XY(moved.box().x(), moved.box().y())));
    return move.map(finding::withFix).orElse(finding);
  }

  private static boolean mayMove(PlacedBalloon balloon, CheckedStrip strip) {
    return !strip.joined().contains(balloon.id())
        && !balloon.pinned()
        && !balloon.bleed()
        && !Deliberate.mayDock(balloon);
  }

  /** The balloon at another place, with the tip of its tail where it was. */
  private static PlacedBalloon moved(PlacedBalloon balloon, XY shift) {
    XY at = balloon.at().plus(shift.x(), shift.y());
    List<Tail> tails =
        balloon.tails().stream()
            .flatMap(old -> Compositor.tail(balloon.set(), at, old.tip()).stream())
            .toList();
    return balloon.at(at, tails);
  }

  /**
   * A finding with the first of some tips of a balloon's tail that does no harm, if one is.
   *
   * @param tail from 0
   */
  static Finding pointing(
      Finding finding, PlacedBalloon balloon, int tail, Stream<XY> tips, CheckedStrip strip) {
    return tips.filter(tip -> FreeRoom.isTailFree(pointing(balloon, tail, tip), strip))
        .findFirst()
        .map(tip -> finding.withFix(new Fix.TailTo(balloon.id(), tail, tip)))
        .orElse(finding);
  }

  private static PlacedBalloon pointing(PlacedBalloon balloon, int tail, XY tip) {
    List<Tail> tails = new ArrayList<>(balloon.tails());
    if (tail < tails.size()) {
      tails.remove(tail);
    }
    Compositor.tail(balloon.set(), balloon.at(), tip).ifPresent(tails::add);
    return balloon.at(balloon.at(), tails);
  }
}
