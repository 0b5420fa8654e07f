package io.github.readfall.app;

import io.github.readfall.canvas.Thing;
import io.github.readfall.desk.Shown;
import io.github.readfall.edits.Item;
import io.github.readfall.finding.Finding;
import io.github.readfall.galley.PlacedBalloon;
import io.github.readfall.geom.Box;
import io.github.readfall.gesture.Places;
import io.github.readfall.wording.Wording;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Says in words what is on the strip. */
final class StripThings {

  private final Places places;
  private final Set<Item> chosen;
  private final Map<String, Integer> found = new HashMap<>();

  StripThings(Shown shown, Set<Item> chosen) {
    this.places = new Places(shown.galley());
    this.chosen = chosen;
    shown.findings().stream()
        .filter(Finding::isOpen)
        .flatMap(finding -> finding.where().balloons().stream().distinct())
        .forEach(id -> found.merge(id, 1, Integer::sum));
  }

  /** Everything, in the order of the script. */
  List<Thing> all() {
    List<Thing> things = new ArrayList<>();
    for (Item item : places.all()) {
      places.box(item).map(box -> thing(item, box)).ifPresent(things::add);
    }
    return things;
  }

  private Thing thing(Item item, Box box) {
    boolean isChosen = chosen.contains(item);
    return item instanceof Item.Balloon balloon
        ? places
            .balloon(balloon.id())
            .map(placed -> new Thing(said(placed), told(placed), box, isChosen))
            .orElseThrow()
        : new Thing(ItemWords.of(item), told(box), box, isChosen);
  }

  private static String said(PlacedBalloon balloon) {
    return Wording.of("thing.said", balloon.cue().speaker(), balloon.cue().text().plain().strip());
  }

  private String told(PlacedBalloon balloon) {
    return Wording.of(
        balloon.pinned() ? "thing.pinned" : "thing.balloon",
        balloon.id(),
        balloon.panel(),
        size(balloon.box()),
        found.getOrDefault(balloon.id(), 0));
  }

  private static String told(Box box) {
    return Wording.of("thing.box", whole(box.x()), whole(box.y()), size(box));
  }

  private static String size(Box box) {
    return Wording.of("thing.size", whole(box.width()), whole(box.height()));
  }

  private static String whole(double px) {
    return Long.toString(Math.round(px));
  }
}
