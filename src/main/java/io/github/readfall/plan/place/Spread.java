package io.github.readfall.plan.place;

import io.github.readfall.plan.Spacing;
import java.util.ArrayList;
import java.util.List;

/**
 * Spreads the items of a panel evenly down it: each gets the room it needs, and the rest is shared
 * out, so that these places have room if there is room at all.
 */
final class Spread {

  /** Shares of the room left over. House defaults, no source. */
  private static final double BEFORE_SPEECH = 0.7;

  private static final double BEFORE_CAPTION = 0.1;
  private static final double BETWEEN = 1;
  private static final double AFTER_SPEECH = 1.2;
  private static final double AFTER_CAPTION = 0.15;

  private Spread() {}

  /**
   * The tops of a panel's items.
   *
   * @param items in script order; not empty
   */
  static List<Double> tops(List<PlacementItem> items, PlacementArea area, Spacing spacing) {
    PlacementItem last = items.get(items.size() - 1);
    double top = area.panel().box().y() + spacing.clearancePx();
    double tail = last.hasTail() ? spacing.leastTailPx() : 0;
    double inside = area.panel().box().bottom() - spacing.clearancePx() - tail;
    double lowest = area.lowestTopPx(last.heightPx(), spacing) + last.heightPx();
    double needed = neededPx(items, spacing);
    double aboveInsets = Math.min(inside, area.firstInsetPx());
    double bottom =
        aboveInsets - top >= needed
            ? aboveInsets
            : inside - top >= needed ? inside : Math.max(inside, lowest);
    double left = Math.max(0, bottom - top - needed);
    double shares = before(items) + BETWEEN * (items.size() - 1) + after(items);
    List<Double> tops = new ArrayList<>();
    double y = top + left * before(items) / shares;
    for (PlacementItem item : items) {
      tops.add(y);
      y += item.heightPx() + roomAfter(item, spacing) + left * BETWEEN / shares;
    }
    return tops;
  }

  /** Height of all items one below another. */
  static double neededPx(List<PlacementItem> items, Spacing spacing) {
    double needed = 0;
    for (int i = 0; i < items.size(); i++) {
      PlacementItem item = items.get(i);
      needed += item.heightPx() + (i < items.size() - 1 ? roomAfter(item, spacing) : 0);
    }
    return needed;
  }

  private static double roomAfter(PlacementItem item, Spacing spacing) {
    return item.hasTail() ? spacing.tailRoomPx() : spacing.gapPx();
  }

  private static double before(List<PlacementItem> items) {
    return items.get(0).isCaption() ? BEFORE_CAPTION : BEFORE_SPEECH;
  }

  private static double after(List<PlacementItem> items) {
    boolean caption = items.size() > 1 && items.get(items.size() - 1).isCaption();
    return caption ? AFTER_CAPTION : AFTER_SPEECH;
  }
}
