package io.github.readfall.plan.place;

import io.github.readfall.strip.Mouth;
import io.github.readfall.strip.PanelBox;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The side of the picture that each speaker keeps to in an exchange, so that the reader sees at
 * once who speaks (common practice). The first speaker of a scene is on the side that is read
 * first; each one who joins in is opposite those they speak with most. If two who answer each other
 * in one panel are still on the same side, the later one changes over there.
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
  static Sides of(List<PlacementItem> items, Map<Integer, Integer> scenes, boolean leftToRight) {
    Map<Integer, List<PlacementItem>> spoken = new LinkedHashMap<>();
    items.stream()
        .filter(PlacementItem::isSpoken)
        .forEach(
            item ->
                spoken
                    .computeIfAbsent(
                        scenes.getOrDefault(item.panel(), 0), scene -> new ArrayList<>())
                    .add(item));
    Map<Integer, Map<String, Boolean>> leading = new HashMap<>();
    spoken.values().forEach(scene -> addScene(scene, leading));
    return new Sides(leading, leftToRight);
  }

  private static void addScene(
      List<PlacementItem> scene, Map<Integer, Map<String, Boolean>> leading) {
    Map<String, Boolean> sides = sidesOf(scene);
    for (int i = 0; i < scene.size(); i++) {
      PlacementItem item = scene.get(i);
      Map<String, Boolean> here = leading.computeIfAbsent(item.panel(), panel -> new HashMap<>());
      boolean own = sides.getOrDefault(item.speaker(), true);
      Optional<Boolean> answered =
          i > 0 && answers(item, scene.get(i - 1))
              ? Optional.ofNullable(here.get(scene.get(i - 1).speaker()))
              : Optional.empty();
      here.putIfAbsent(item.speaker(), answered.map(other -> !other).orElse(own));
      item.speakers().forEach(other -> here.putIfAbsent(other, !here.get(item.speaker())));
    }
  }

  private static boolean answers(PlacementItem item, PlacementItem before) {
    return item.panel() == before.panel() && !item.speaker().equals(before.speaker());
  }

  /** Each speaker opposite those with whom they have exchanged most words so far. */
  private static Map<String, Boolean> sidesOf(List<PlacementItem> scene) {
    Map<String, Boolean> sides = new HashMap<>();
    for (PlacementItem item : scene) {
      if (!sides.containsKey(item.speaker())) {
        int leading = 0;
        int trailing = 0;
        for (int i = 1; i < scene.size(); i++) {
          Optional<String> partner =
              partner(item.speaker(), scene.get(i - 1).speaker(), scene.get(i).speaker());
          Optional<Boolean> side = partner.map(sides::get);
          leading += side.filter(s -> s).isPresent() ? 1 : 0;
          trailing += side.filter(s -> !s).isPresent() ? 1 : 0;
        }
        sides.put(item.speaker(), leading <= trailing);
      }
    }
    return sides;
  }

  private static Optional<String> partner(String speaker, String a, String b) {
    if (a.equals(b)) {
      return Optional.empty();
    }
    if (a.equals(speaker)) {
      return Optional.of(b);
    }
    return b.equals(speaker) ? Optional.of(a) : Optional.empty();
  }

  /** The expected middle of a speaker of an item across the panel, in strip pixels. */
  double middlePx(PlacementItem item, String speaker, PanelBox panel, Optional<Mouth> mouth) {
    if (mouth.isPresent()) {
      return mouth.get().at().x();
    }
    double share = isLeading(item, speaker) ? LEADING : TRAILING;
    double fromLeft = leftToRight ? share : 1 - share;
    return panel.box().x() + fromLeft * panel.box().width();
  }

  /** Returns true if a speaker of an item keeps to the left. */
  boolean isLeft(PlacementItem item, String speaker) {
    return isLeading(item, speaker) == leftToRight;
  }

  private boolean isLeading(PlacementItem item, String speaker) {
    return leading.getOrDefault(item.panel(), Map.of()).getOrDefault(speaker, true);
  }
}
