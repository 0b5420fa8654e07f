package io.github.readfall.plan.place;

import io.github.readfall.art.DetailMap;
import io.github.readfall.plan.Spacing;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Arranges items in their placement areas.
 *
 * @param spacing the distances kept
 * @param pairs what two items cost each other
 * @param scenes the number of each panel's scene; panels of no scene are left out
 * @param detail of the art
 */
record Arranger(Spacing spacing, Pairs pairs, Map<Integer, Integer> scenes, DetailMap detail) {

  /**
   * The candidates of each item.
   *
   * @param items in script order; those of a panel without an area are left out
   * @param areas placement areas by panel
   */
  List<Candidates> makers(List<PlacementItem> items, Map<Integer, PlacementArea> areas) {
    Sides sides = Sides.of(items, scenes, pairs.leftToRight());
    Map<Integer, List<PlacementItem>> byPanel = new LinkedHashMap<>();
    items.forEach(
        item -> byPanel.computeIfAbsent(item.panel(), panel -> new ArrayList<>()).add(item));
    List<Candidates> makers = new ArrayList<>();
    byPanel.forEach(
        (panel, own) ->
            Optional.ofNullable(areas.get(panel))
                .ifPresent(area -> makers.addAll(makers(own, area, sides))));
    return makers;
  }

  private List<Candidates> makers(List<PlacementItem> items, PlacementArea area, Sides sides) {
    List<Double> tops = Spread.tops(items, area, spacing);
    List<Candidates> makers = new ArrayList<>();
    for (int i = 0; i < tops.size(); i++) {
      makers.add(new Candidates(items.get(i), area, spacing, sides, tops.get(i), detail));
    }
    return makers;
  }

  /** The cheapest place found for each item. */
  List<Candidate> arranged(List<Candidates> makers) {
    Map<Integer, List<Double>> tops = new HashMap<>();
    makers.forEach(
        maker ->
            tops.computeIfAbsent(maker.item().panel(), panel -> new ArrayList<>())
                .add(maker.idealTopPx()));
    List<List<Candidate>> candidates = new ArrayList<>();
    makers.forEach(
        maker -> candidates.add(maker.all(tops.getOrDefault(maker.item().panel(), List.of()))));
    List<Candidate> grid =
        new PlaceSearch(
                makers.stream().map(Candidates::item).toList(),
                makers.stream().map(Candidates::area).toList(),
                candidates,
                pairs)
            .cheapest();
    return new AdjustSearch(makers, grid, pairs).adjusted();
  }

  /** The items that had to break a rule, by their place in the list. */
  List<Integer> broken(List<Candidates> makers, List<Candidate> places) {
    AdjustSearch costs = new AdjustSearch(makers, places, pairs);
    List<Integer> broken = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      if (costs.costAt(i, places.get(i)) >= Costs.HARD) {
        broken.add(i);
      }
    }
    return broken;
  }
}
