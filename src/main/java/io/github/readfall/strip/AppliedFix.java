package io.github.readfall.strip;

import io.github.readfall.base.finding.Fix;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/** Applies the fix that a finding offers to a layout. */
public final class AppliedFix {

  private static final double SAME_CUT_PX = 0.5;

  private AppliedFix() {}

  /**
   * The layout with the fix applied. Parts that the fix does not suit stay as they are: a balloon
   * that is pinned or already lettered, one that is missing or has no place to move from, and cuts
   * that are planned.
   */
  public static Layout apply(Layout layout, Fix fix) {
    return apply(layout, fix, balloon -> !balloon.pinned() && !balloon.isLettered());
  }

  /**
   * The layout with the fix applied, pinned and lettered balloons included, because a person asked
   * for it.
   */
  public static Layout byHand(Layout layout, Fix fix) {
    return apply(layout, fix, balloon -> true);
  }

  private static Layout apply(Layout layout, Fix fix, Predicate<LaidBalloon> free) {
    if (fix instanceof Fix.MoveCut cut) {
      return layout.withCuts(layout.cuts().map(cuts -> cuts(cuts, cut)));
    }
    if (fix instanceof Fix.Move move) {
      return changed(layout, move.balloon(), free, balloon -> moved(balloon, move.to()));
    }
    if (fix instanceof Fix.Resize resize) {
      return changed(
          layout, resize.balloon(), free, balloon -> balloon.at(Optional.of(resize.box())));
    }
    if (fix instanceof Fix.TailTo tail) {
      return changed(
          layout, tail.balloon(), free, balloon -> balloon.withTip(tail.tail(), tail.tip()));
    }
    throw new IllegalArgumentException("an unknown fix: " + fix);
  }

  private static Layout changed(
      Layout layout, String id, Predicate<LaidBalloon> free, UnaryOperator<LaidBalloon> change) {
    return layout.withBalloons(
        layout.balloons().stream()
            .map(
                balloon ->
                    balloon.id().equals(id) && free.test(balloon) ? change.apply(balloon) : balloon)
            .toList());
  }

  private static LaidBalloon moved(LaidBalloon balloon, XY to) {
    Optional<Box> there =
        balloon.box().map(box -> new Box(to.x(), to.y(), box.width(), box.height()));
    return balloon.at(there);
  }

  private static List<Double> cuts(List<Double> cuts, Fix.MoveCut move) {
    TreeSet<Double> moved = new TreeSet<>();
    for (double cut : cuts) {
      boolean same = Math.abs(cut - move.fromPx()) <= SAME_CUT_PX;
      moved.add(same ? move.toPx() : cut);
    }
    return List.copyOf(moved);
  }
}
