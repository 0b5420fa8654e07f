package io.github.readfall.plan.place;

import io.github.readfall.base.geom.Box;
import io.github.readfall.plan.Spacing;

/**
 * Computes what two items cost each other.
 *
 * @param spacing the distances kept
 * @param leftToRight true if the strip is read from the left
 */
record Pairs(Spacing spacing, boolean leftToRight) {

  /**
   * If tops are this far apart, in the lesser height, the higher is read first on whatever side it
   * is; nearer ones from the leading side. A little stricter than the rules that check it.
   */
  private static final double STACKED = 0.55;

  private static final double HAIR = 1e-6;

  /** A tail keeps this share of the gap between balloons. House default, no source. */
  private static final double TAIL_GAP = 0.7;

  /**
   * The cost of two items in their places.
   *
   * @param before in the script
   * @param after in the script
   */
  double cost(PlacementItem before, Candidate a, PlacementItem after, Candidate b) {
    if (after.isJoinedTo(before)) {
      return isReadInOrder(before, a, after, b) ? 0 : Costs.HARD;
    }
    int broken = 0;
    broken += a.box().distanceTo(b.box()) < spacing.gapPx() - HAIR ? 1 : 0;
    broken += tailsMeet(a, b) ? 1 : 0;
    double abreast = 0;
    if (before.panel() == after.panel()) {
      broken += isReadInOrder(before, a, after, b) ? 0 : 1;
      abreast = b.box().y() < a.box().bottom() ? Costs.ABREAST : 0;
    }
    return broken * Costs.HARD + abreast;
  }

  private boolean tailsMeet(Candidate a, Candidate b) {
    double clear = TAIL_GAP * spacing.gapPx();
    if (!a.reach().grownBy(clear).meets(b.reach())) {
      return false;
    }
    boolean tailed = a.tail().isPresent();
    if (tailed && a.tail().get().meets(b.box(), clear)) {
      return true;
    }
    return b.tail().isPresent()
        && (b.tail().get().meets(a.box(), clear)
            || (tailed && b.tail().get().meets(a.tail().get(), clear)));
  }

  private boolean isReadInOrder(
      PlacementItem before, Candidate a, PlacementItem after, Candidate b) {
    Box first = b.box();
    double lower = first.y() - a.lastBox().y();
    double lesser = Math.min(a.lastBox().height(), after.first().box().height());
    if (lower > STACKED * lesser) {
      return true;
    }
    boolean single = before.balloons().size() == 1 && after.balloons().size() == 1;
    boolean leads = leftToRight ? a.box().right() < first.x() : first.right() < a.box().x();
    return single && leads && lower >= -HAIR;
  }

  /**
   * The cost of a third balloon beside two: what the search counts for an item's second neighbour
   * on top of {@link #cost}.
   */
  double besideThird(Candidate before, Candidate after) {
    return after.box().y() < before.box().bottom() + spacing.gapPx() - HAIR ? Costs.HARD : 0;
  }

  /** Returns true if two items could come near each other, wherever they are in their areas. */
  boolean mayMeet(PlacementItem a, PlacementArea areaOfA, PlacementItem b, PlacementArea areaOfB) {
    return a.panel() == b.panel() || reach(a, areaOfA).meets(reach(b, areaOfB));
  }

  private Box reach(PlacementItem item, PlacementArea area) {
    Box panel = area.panel().box();
    double lowest = area.lowestTopPx(item.heightPx(), spacing) + item.heightPx();
    Box inside =
        Box.ofEdges(
            Math.min(panel.x(), area.outerLeftPx()),
            panel.y(),
            Math.max(panel.right(), area.outerRightPx()),
            Math.max(panel.bottom(), lowest));
    Box own = item.fixedAt().map(at -> inside.union(item.boxAt(at))).orElse(inside);
    return own.grownBy(spacing.gapPx() + (item.hasTail() ? spacing.leastTailPx() : 0));
  }
}
