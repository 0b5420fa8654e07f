package io.github.readfall.place;

import io.github.readfall.strip.Mouth;
import io.github.readfall.strip.PanelBox;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The side of the picture that each speaker keeps to in an exchange, so that the reader need not
 * look twice who speaks (common practice). Who speaks first stands on the side that is read first.
 */
final class Sides {

  /** A speaker's middle, as a share of the panel's width from its leading side. House default. */
  private static final double LEADING = 0.3;

  private static final double TRAILING = 1 - LEADING;

  private final Map<Integer, Map<String, Boolean>> leading;
  private final boolean leftToRight;

  private Sides(Map<Integer, Map<String, Boolean>> leading, boolean leftToRight) {
    this.leading = leading;
    this.leftToRight = leftToRight;
  }

  /**
   * The sides of an episode.
   *
   * @param items in script order
   * @param scenes the number of each panel's scene; panels of no scene are left out
   * @param leftToRight whether the strip is read from the left
   */
  static Sides of(List<Item> items, Map<Integer, Integer> scenes, boolean leftToRight) {
    Map<Integer, Map<String, Boolean>> leading = new HashMap<>();
    Map<String, Boolean> sides = new HashMap<>();
    Optional<Item> before = Optional.empty();
    for (Item item : items) {
      if (!item.isSpoken()) {
        continue;
      }
      int scene = scenes.getOrDefault(item.panel(), 0);
      if (before.filter(b -> scenes.getOrDefault(b.panel(), 0) != scene).isPresent()) {
        sides.clear();
        before = Optional.empty();
      }
      boolean opposite = before.map(b -> !sides.getOrDefault(b.speaker(), false)).orElse(true);
      boolean side = sides.computeIfAbsent(item.speaker(), s -> opposite);
      leading.computeIfAbsent(item.panel(), p -> new HashMap<>()).put(item.speaker(), side);
      before = Optional.of(item);
    }
    return new Sides(leading, leftToRight);
  }

  /** Where a speaker is taken to stand: across the panel, in strip pixels. */
  double middlePx(Item item, PanelBox panel, Optional<Mouth> mouth) {
    if (mouth.isPresent()) {
      return mouth.get().at().x();
    }
    double share = isLeading(item) ? LEADING : TRAILING;
    double fromLeft = leftToRight ? share : 1 - share;
    return panel.box().x() + fromLeft * panel.box().width();
  }

  /** Whether an item's speaker keeps to the left. */
  boolean isLeft(Item item) {
    return isLeading(item) == leftToRight;
  }

  private boolean isLeading(Item item) {
    return leading.getOrDefault(item.panel(), Map.of()).getOrDefault(item.speaker(), true);
  }
}
