package io.github.readfall.export.phone;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A finding and the mark to tap for it.
 *
 * @param finding to be shown
 * @param place in strip pixels
 * @param mark the middle of its mark, in strip pixels
 */
record Spot(Finding finding, Box place, XY mark) {

  /** Size of a mark: more than the least that WCAG 2.2, 2.5.8 asks of a target, 24 CSS px. */
  static final int MARK_CSS_PX = 28;

  /** The narrowest page that must do without scrolling sideways (WCAG 2.2, 1.4.10). */
  private static final int NARROWEST_CSS_PX = 320;

  /** A finding about more balloons than these has no place. House default, no source. */
  private static final int MOST_BALLOONS = 2;

  /** Every finding that has a place, from the top; no mark covers another on any phone. */
  static List<Spot> of(Galley galley, List<Finding> findings) {
    double sizePx = galley.widthPx() * MARK_CSS_PX / NARROWEST_CSS_PX;
    List<Finding> placed =
        findings.stream()
            .filter(finding -> place(galley, finding).isPresent())
            .sorted(Comparator.comparingDouble(f -> place(galley, f).orElseThrow().y()))
            .toList();
    List<Spot> spots = new ArrayList<>();
    for (Finding finding : placed) {
      Box place = place(galley, finding).orElseThrow();
      spots.add(new Spot(finding, place, free(galley, place, sizePx, spots)));
    }
    return List.copyOf(spots);
  }

  /** The place of a finding: its own box, or that of its balloon. */
  static Optional<Box> place(Galley galley, Finding finding) {
    List<String> ids = finding.where().balloons();
    return finding
        .box()
        .or(
            () ->
                galley.balloons().stream()
                    .filter(balloon -> ids.size() <= MOST_BALLOONS && ids.contains(balloon.id()))
                    .map(PlacedBalloon::box)
                    .findFirst());
  }

  /** The nearest free place to the upper right corner of a place: to its left, then below. */
  private static XY free(Galley galley, Box place, double sizePx, List<Spot> taken) {
    double half = sizePx / 2;
    double right = galley.widthPx() - half;
    double x = Math.max(half, Math.min(place.right(), right));
    double y = Math.max(half, Math.min(place.y(), galley.heightPx() - half));
    XY at = new XY(x, y);
    while (isTaken(at, sizePx, taken)) {
      double left = at.x() - sizePx;
      at = left >= half ? new XY(left, at.y()) : new XY(right, at.y() + sizePx);
    }
    return at;
  }

  private static boolean isTaken(XY at, double sizePx, List<Spot> taken) {
    return taken.stream()
        .anyMatch(
            spot ->
                Math.abs(spot.mark.x() - at.x()) < sizePx
                    && Math.abs(spot.mark.y() - at.y()) < sizePx);
  }
}
