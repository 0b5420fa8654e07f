package io.github.readfall.plan.place;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Finds panels with less room than their items need, and how much they lack. */
record Shortfalls(Arranger arranger) {

  /** Enough to let everything hang below the panel and still be nearer to it than to the next. */
  private static final double OPEN_MOST = 2.5;

  private static final double OPEN_STEP_PX = 8;

  /**
   * Every panel in which a hard rule had to be broken, and the least opening that would avoid it.
   */
  List<Shortfall> of(List<Candidates> makers, List<Candidate> places) {
    Map<PlacementArea, List<String>> lacking = new LinkedHashMap<>();
    for (int i : arranger.broken(makers, places)) {
      PlacementItem item = makers.get(i).item();
      if (item.fixedAt().isEmpty()) {
        lacking
            .computeIfAbsent(makers.get(i).area(), area -> new ArrayList<>())
            .addAll(item.balloons().stream().map(balloon -> balloon.cue().id()).toList());
      }
    }
    List<Shortfall> shortfalls = new ArrayList<>();
    lacking.forEach((area, ids) -> shortfalls.add(shortfall(area, ids, itemsOn(area, makers))));
    return shortfalls;
  }

  private static List<PlacementItem> itemsOn(PlacementArea area, List<Candidates> makers) {
    return makers.stream()
        .map(Candidates::item)
        .filter(item -> item.panel() == area.panel().panel())
        .toList();
  }

  private Shortfall shortfall(PlacementArea area, List<String> ids, List<PlacementItem> items) {
    double atPx = (area.panel().box().bottom() + area.nextTopPx()) / 2;
    return new Shortfall(area.panel().panel(), ids, atPx, leastOpeningPx(area, items));
  }

  private OptionalDouble leastOpeningPx(PlacementArea area, List<PlacementItem> items) {
    double enough =
        OPEN_MOST * (Spread.neededPx(items, arranger.spacing()) + arranger.spacing().tailRoomPx());
    if (!fits(items, area, enough)) {
      return OptionalDouble.empty();
    }
    double little = 0;
    while (enough - little > OPEN_STEP_PX) {
      double middle = (little + enough) / 2;
      if (fits(items, area, middle)) {
        enough = middle;
      } else {
        little = middle;
      }
    }
    return OptionalDouble.of(Math.ceil(enough));
  }

  private boolean fits(List<PlacementItem> items, PlacementArea area, double openedPx) {
    Map<Integer, PlacementArea> opened = Map.of(area.panel().panel(), area.openedBy(openedPx));
    List<Candidates> makers = arranger.makers(items, opened);
    return arranger.broken(makers, arranger.arranged(makers)).isEmpty();
  }
}
