package io.github.readfall.window.strip;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.script.Script;
import io.github.readfall.strip.edits.StripItem;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.strip.gesture.ElementPlaces;
import io.github.readfall.window.canvas.ElementDescription;
import io.github.readfall.window.model.EpisodeSnapshot;
import io.github.readfall.window.parts.BalloonName;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Describes the elements of the strip in words. */
final class ElementDescriptions {

  private final ElementPlaces places;
  private final Script script;
  private final Set<StripItem> chosen;
  private final Map<String, Integer> findingCounts = new HashMap<>();

  ElementDescriptions(EpisodeSnapshot shown, Set<StripItem> chosen) {
    this.places = new ElementPlaces(shown.galley());
    this.script = shown.episode().script();
    this.chosen = chosen;
    shown.findings().stream()
        .filter(Finding::isOpen)
        .flatMap(finding -> finding.where().balloons().stream().distinct())
        .forEach(id -> findingCounts.merge(id, 1, Integer::sum));
  }

  /** The descriptions of all elements, in the order of the script. */
  List<ElementDescription> all() {
    List<ElementDescription> descriptions = new ArrayList<>();
    for (StripItem item : places.all()) {
      places.box(item).map(box -> describe(item, box)).ifPresent(descriptions::add);
    }
    return descriptions;
  }

  private ElementDescription describe(StripItem item, Box box) {
    boolean isChosen = chosen.contains(item);
    return item instanceof StripItem.Balloon balloon
        ? places
            .balloon(balloon.id())
            .map(placed -> new ElementDescription(name(placed), description(placed), box, isChosen))
            .orElseThrow()
        : new ElementDescription(ItemNames.of(item, script), size(box), box, isChosen);
  }

  private static String name(PlacedBalloon balloon) {
    return Wording.of("element.said", balloon.cue().names(), balloon.cue().text().plain().strip());
  }

  private String description(PlacedBalloon balloon) {
    return Wording.of(
        balloon.pinned() ? "element.pinned" : "element.balloon",
        BalloonName.of(script, balloon.id()),
        size(balloon.box()),
        findingCounts.getOrDefault(balloon.id(), 0));
  }

  private static String size(Box box) {
    return Wording.of("element.size", whole(box.width()), whole(box.height()));
  }

  private static String whole(double px) {
    return Long.toString(Math.round(px));
  }
}
