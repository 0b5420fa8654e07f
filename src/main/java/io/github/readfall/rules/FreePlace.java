package io.github.readfall.rules;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Fix;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Region;
import io.github.readfall.base.geom.XY;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.galley.Compositor;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.type.balloon.Tail;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A place a small way off, where a balloon has room and is in nobody's way. */
final class FreePlace {

  /** A little more than what is needed, so that rounding a place takes nothing away. */
  static final double SLACK_PX = 0.5;

  private FreePlace() {}

  /** A balloon with a shift that may help it. */
  private record Try(PlacedBalloon balloon, XY shift) {
    double px() {
      return shift.distanceTo(new XY(0, 0));
    }
  }

  /** A finding with the smallest of some shifts of a balloon that does no harm, if one is. */
  static Finding mended(
      Finding finding, PlacedBalloon balloon, Stream<XY> shifts, Neighbourhood around) {
    return mended(finding, shifts.map(shift -> new Try(balloon, shift)), around);
  }

  /** A finding with the smallest shift of either of a pair that leaves them so much room. */
  static Finding mended(Finding finding, BalloonGap gap, double roomPx, Neighbourhood around) {
    List<XY> shifts = gap.shifts(roomPx + SLACK_PX);
    Stream<Try> tries =
        Stream.concat(
            shifts.stream().map(shift -> new Try(gap.second(), shift)),
            shifts.stream().map(shift -> new Try(gap.first(), new XY(-shift.x(), -shift.y()))));
    return mended(finding, tries, around);
  }

  private static Finding mended(Finding finding, Stream<Try> tries, Neighbourhood around) {
    Optional<Fix> move =
        tries
            .filter(one -> mayMove(one.balloon(), around))
            .sorted(Comparator.comparingDouble(Try::px))
            .map(one -> moved(one.balloon(), one.shift()))
            .filter(moved -> isFree(moved, around))
            .findFirst()
            .map(moved -> new Fix.Move(moved.id(), new XY(moved.box().x(), moved.box().y())));
    return move.map(finding::withFix).orElse(finding);
  }

  private static boolean mayMove(PlacedBalloon balloon, Neighbourhood around) {
    return !around.joined().contains(balloon.id())
        && !balloon.pinned()
        && !balloon.bleed()
        && !Deliberate.mayDock(balloon);
  }

  /** A balloon elsewhere, its tail still ending where it did. */
  private static PlacedBalloon moved(PlacedBalloon balloon, XY shift) {
    XY at = balloon.at().plus(shift.x(), shift.y());
    Optional<Tail> tail =
        balloon.tail().flatMap(old -> Compositor.tail(balloon.set(), at, old.tip()));
    return new PlacedBalloon(
        balloon.set(),
        at,
        tail,
        balloon.pinned(),
        balloon.bleed(),
        balloon.body().movedBy(shift.x(), shift.y()),
        tail.map(grown -> Region.of(grown.outline())));
  }

  /** A finding with the first of some tips of a balloon's tail that does no harm, if one is. */
  static Finding pointing(
      Finding finding, PlacedBalloon balloon, Stream<XY> tips, Neighbourhood around) {
    return tips.filter(tip -> isTailFree(pointing(balloon, tip), around))
        .findFirst()
        .map(tip -> finding.withFix(new Fix.TailTo(balloon.id(), tip)))
        .orElse(finding);
  }

  private static PlacedBalloon pointing(PlacedBalloon balloon, XY tip) {
    Optional<Tail> tail = Compositor.tail(balloon.set(), balloon.at(), tip);
    return new PlacedBalloon(
        balloon.set(),
        balloon.at(),
        tail,
        balloon.pinned(),
        balloon.bleed(),
        balloon.body(),
        tail.map(grown -> Region.of(grown.outline())));
  }

  private static boolean isTailFree(PlacedBalloon balloon, Neighbourhood around) {
    return balloon.tail().isPresent()
        && CoveredArt.coverings(balloon, around).findAny().isEmpty()
        && CrossingTail.crossings(balloon, around).findAny().isEmpty();
  }

  /** Whether a balloon is in nobody's way, nor out of its panel and the strip. */
  static boolean isFree(PlacedBalloon balloon, Neighbourhood around) {
    return isInside(balloon, around.galley())
        && BalloonGap.isClear(balloon, around)
        && TangentOutline.touches(balloon, around).findAny().isEmpty()
        && CoveredArt.coverings(balloon, around).findAny().isEmpty()
        && CrossingTail.crossings(balloon, around).findAny().isEmpty();
  }

  /** Whether it is inside its panel's width and height, and the strip's safe margin. */
  private static boolean isInside(PlacedBalloon balloon, Galley galley) {
    double marginPx = MarginIntrusion.limitPx(galley);
    Box strip = galley.extent();
    Box safe =
        Box.ofEdges(marginPx, 0, Math.max(marginPx, strip.right() - marginPx), strip.bottom());
    Optional<Box> panel = galley.panel(balloon.panel()).map(PanelBox::box);
    return safe.covers(balloon.box())
        && strip.covers(balloon.reach())
        && panel.filter(box -> !box.covers(balloon.box().centre())).isEmpty();
  }
}
