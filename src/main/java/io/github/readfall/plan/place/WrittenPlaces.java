package io.github.readfall.plan.place;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.strip.CueMark;
import io.github.readfall.strip.Extra;
import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.Layout;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * Writes places into a layout.
 *
 * @param layout before placing
 * @param laid its balloons, by id
 */
record WrittenPlaces(Layout layout, Map<String, LaidBalloon> laid) {

  static WrittenPlaces on(Layout layout) {
    return new WrittenPlaces(
        layout,
        layout.balloons().stream()
            .collect(Collectors.toMap(LaidBalloon::id, balloon -> balloon, (a, b) -> a)));
  }

  /**
   * The layout with every item at its place; balloons that were not placed stay as they were.
   *
   * @param items in script order
   * @param places of the items
   * @param tips of the items' tails
   */
  Layout with(List<PlacementItem> items, List<Candidate> places, List<List<XY>> tips) {
    Map<String, LaidBalloon> placed = new LinkedHashMap<>();
    for (int i = 0; i < items.size(); i++) {
      PlacementItem item = items.get(i);
      int last = item.balloons().size() - 1;
      for (int b = 0; b <= last; b++) {
        XY at = item.place(b, places.get(i).at());
        LaidBalloon balloon =
            written(item.balloons().get(b), at, item.fixedAt().isPresent())
                .withTips(b == last ? tips.get(i) : List.of());
        placed.put(balloon.id(), balloon);
      }
    }
    layout.balloons().forEach(balloon -> placed.putIfAbsent(balloon.id(), balloon));
    return layout.withBalloons(List.copyOf(placed.values()));
  }

  /** A fixed balloon keeps the very box that it has. */
  private LaidBalloon written(SetBalloon balloon, XY at, boolean fixed) {
    String id = balloon.cue().id();
    LaidBalloon before = laid.getOrDefault(id, blank(id));
    Box own = balloon.box();
    Optional<Box> box =
        fixed ? before.box() : Optional.of(new Box(at.x(), at.y(), own.width(), own.height()));
    return before.of(id, CueMark.of(balloon.cue())).at(box);
  }

  private static LaidBalloon blank(String id) {
    return new LaidBalloon(
        id,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        List.of(),
        false,
        false,
        Extra.NONE);
  }
}
